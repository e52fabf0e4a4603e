package ouzel.protocol.codec;

import java.nio.charset.StandardCharsets;
import java.util.List;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Challenge;
import ouzel.protocol.message.CurrentTrace;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.Open;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.ValveWaveform;
import ouzel.protocol.message.VersionRefusal;

/** Field by field, what a payload's messages look like; status and settings have layouts of their own. */
final class DownlinkLayouts {
    private static final int TAG_LENGTH = 16;
    private static final int SIMULATED = 1;

    private DownlinkLayouts() {}

    static void write(Identity identity, WireWriter body) {
        byte[] firmware = identity.firmware().getBytes(StandardCharsets.US_ASCII);
        body.signed32(identity.capabilities());
        body.unsigned32(identity.bootCount());
        body.unsigned16(identity.settingsCheck());
        body.unsigned8(identity.simulated() ? SIMULATED : 0);
        body.unsigned8(firmware.length);
        body.bytes(Bytes.of(firmware));
    }

    static Identity readIdentity(WireReader body) {
        int capabilities = body.signed32();
        long bootCount = body.unsigned32();
        int settingsCheck = body.unsigned16();
        boolean simulated = (body.unsigned8() & SIMULATED) != 0;
        byte[] firmware = body.bytes(body.unsigned8()).toArray();
        return new Identity(
                new String(firmware, StandardCharsets.US_ASCII), capabilities, bootCount, settingsCheck, simulated);
    }

    static void write(Challenge challenge, WireWriter body) {
        body.bytes(challenge.consoleNonce());
        body.bytes(challenge.payloadNonce());
        body.bytes(challenge.tag());
    }

    static Challenge readChallenge(WireReader body) {
        return new Challenge(body.bytes(Open.NONCE_LENGTH), body.bytes(Open.NONCE_LENGTH), body.bytes(TAG_LENGTH));
    }

    static void write(CurrentTrace trace, WireWriter body) {
        body.unsigned8(trace.sampler().code());
        body.unsigned8(trace.milliamps().size());
        body.unsigned32(trace.firstSample());
        trace.milliamps().forEach(body::unsigned16);
    }

    static CurrentTrace readCurrentTrace(WireReader body) {
        Sampler sampler = Codes.SAMPLER.read(body);
        int count = body.unsigned8();
        return new CurrentTrace(sampler, body.unsigned32(), samples(count, body));
    }

    static void write(ValveWaveform waveform, WireWriter body) {
        body.unsigned8(waveform.sampler().code());
        body.unsigned8(waveform.milliamps().size());
        body.unsigned16(waveform.capture());
        body.unsigned16(waveform.total());
        body.unsigned16(waveform.firstSample());
        waveform.milliamps().forEach(body::unsigned16);
    }

    static ValveWaveform readValveWaveform(WireReader body) {
        Sampler sampler = Codes.SAMPLER.read(body);
        int count = body.unsigned8();
        return new ValveWaveform(
                sampler, body.unsigned16(), body.unsigned16(), body.unsigned16(), samples(count, body));
    }

    static void write(Event event, WireWriter body) {
        body.unsigned32(event.number());
        body.unsigned32(event.bootCount());
        body.unsigned32(event.timeMillis());
        body.unsigned8(event.kind().code());
        body.unsigned8(event.sampler().code());
        body.unsigned32(event.orderId());
        body.unsigned8(event.reason().code());
        body.signed32(event.value());
    }

    static Event readEvent(WireReader body) {
        return new Event(
                body.unsigned32(),
                body.unsigned32(),
                body.unsigned32(),
                Codes.EVENT_KIND.read(body),
                Codes.SAMPLER.read(body),
                body.unsigned32(),
                Codes.REASON.read(body),
                body.signed32());
    }

    static void write(Outcome outcome, WireWriter body) {
        body.unsigned32(outcome.orderId());
        body.unsigned8(outcome.stage().code());
        body.unsigned8(outcome.reason().code());
        body.unsigned8(outcome.permissive());
        body.signed32(outcome.measured());
        body.signed32(outcome.limit());
        body.any64(outcome.token());
        body.unsigned16(outcome.tokenLifeMillis());
    }

    static Outcome readOutcome(WireReader body) {
        return new Outcome(
                body.unsigned32(),
                Codes.STAGE.read(body),
                Codes.REASON.read(body),
                body.unsigned8(),
                body.signed32(),
                body.signed32(),
                body.any64(),
                body.unsigned16());
    }

    static void write(VersionRefusal refusal, WireWriter body) {
        body.unsigned8(refusal.spoken());
        body.unsigned8(refusal.heard());
    }

    static VersionRefusal readVersionRefusal(WireReader body) {
        return new VersionRefusal(body.unsigned8(), body.unsigned8());
    }

    private static List<Integer> samples(int count, WireReader body) {
        Integer[] samples = new Integer[count];
        for (int i = 0; i < count; i++) {
            samples[i] = body.unsigned16();
        }
        return List.of(samples);
    }
}
