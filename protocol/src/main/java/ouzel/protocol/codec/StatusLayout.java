package ouzel.protocol.codec;

import java.util.List;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Status;

/** The status body, 53 bytes: 30 of state and 23 of readings. */
final class StatusLayout {
    private StatusLayout() {}

    static void write(Status status, WireWriter body) {
        body.unsigned32(status.session());
        for (SamplerState state : status.states()) {
            body.unsigned8(state.code());
        }
        body.unsigned16(status.armLifeMillis());
        body.signed32(status.permissivesMet());
        body.unsigned32(status.newestEvent());
        body.unsigned32(status.oldestEvent());
        body.unsigned16(status.refusedFrames());
        body.unsigned16(status.meteredMillilitres());
        body.unsigned16(status.runMillis());
        body.unsigned8(status.strokesUsed());
        body.unsigned16(status.bootCount());
        write(status.readings(), body);
    }

    static Status read(WireReader body) {
        return new Status(
                body.unsigned32(),
                List.of(Codes.SAMPLER_STATE.read(body), Codes.SAMPLER_STATE.read(body), Codes.SAMPLER_STATE.read(body)),
                body.unsigned16(),
                body.signed32(),
                body.unsigned32(),
                body.unsigned32(),
                body.unsigned16(),
                body.unsigned16(),
                body.unsigned16(),
                body.unsigned8(),
                body.unsigned16(),
                readReadings(body));
    }

    private static void write(Readings readings, WireWriter body) {
        body.reading16(readings.batteryMillivolts());
        body.reading16(readings.batteryMilliamps());
        body.reading16(readings.tiltTenths());
        body.reading16(readings.motionMilligees());
        body.reading16(readings.vibrationMilligees());
        body.signedReading16(readings.temperatureTenths());
        body.reading16(readings.pressureTensPascals());
        body.signedReading16(readings.bagPascals());
        body.reading16(readings.gasKilopascals());
        body.reading16(readings.sinceVentSeconds());
        body.reading8(readings.strokesLeft());
        body.unsigned16(readings.switches());
    }

    private static Readings readReadings(WireReader body) {
        return new Readings(
                body.reading16(),
                body.reading16(),
                body.reading16(),
                body.reading16(),
                body.reading16(),
                body.signedReading16(),
                body.reading16(),
                body.signedReading16(),
                body.reading16(),
                body.reading16(),
                body.reading8(),
                body.unsigned16());
    }
}
