package ouzel.protocol.codec;

import ouzel.protocol.message.AcknowledgeEvents;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.ChangeSettings;
import ouzel.protocol.message.FetchEvents;
import ouzel.protocol.message.Open;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.QueryOutcome;
import ouzel.protocol.message.Reload;
import ouzel.protocol.message.Stop;
import ouzel.protocol.message.Trigger;

/** Field by field, what a console's messages look like; of orders, what stands inside the envelope. */
final class UplinkLayouts {
    private UplinkLayouts() {}

    static void nothing(Order order, WireWriter body) {
        // These orders have no fields: their kind says everything.
    }

    static void write(Open open, WireWriter body) {
        body.bytes(open.consoleNonce());
    }

    static Open readOpen(WireReader body) {
        return new Open(body.bytes(Open.NONCE_LENGTH));
    }

    static void write(Arm arm, WireWriter body) {
        body.unsigned8(arm.sampler().code());
        body.unsigned16(arm.dose());
        body.signed32(arm.attested());
    }

    static Arm readArm(WireReader body) {
        return new Arm(Codes.SAMPLER.read(body), body.unsigned16(), body.signed32());
    }

    static void write(Trigger trigger, WireWriter body) {
        body.unsigned8(trigger.sampler().code());
        body.any64(trigger.token());
    }

    static Trigger readTrigger(WireReader body) {
        return new Trigger(Codes.SAMPLER.read(body), body.any64());
    }

    static void write(Stop stop, WireWriter body) {
        body.unsigned8(stop.sampler().code());
    }

    static Stop readStop(WireReader body) {
        return new Stop(Codes.SAMPLER.read(body));
    }

    static void write(Reload reload, WireWriter body) {
        body.unsigned8(reload.sampler().code());
    }

    static Reload readReload(WireReader body) {
        return new Reload(Codes.SAMPLER.read(body));
    }

    static void write(ChangeSettings change, WireWriter body) {
        SettingsLayout.write(change.settings(), body);
    }

    static ChangeSettings readChangeSettings(WireReader body) {
        return new ChangeSettings(SettingsLayout.read(body));
    }

    static void write(AcknowledgeEvents acknowledge, WireWriter body) {
        body.unsigned32(acknowledge.upTo());
    }

    static AcknowledgeEvents readAcknowledgeEvents(WireReader body) {
        return new AcknowledgeEvents(body.unsigned32());
    }

    static void write(FetchEvents fetch, WireWriter body) {
        body.unsigned32(fetch.from());
    }

    static FetchEvents readFetchEvents(WireReader body) {
        return new FetchEvents(body.unsigned32());
    }

    static void write(QueryOutcome query, WireWriter body) {
        body.unsigned32(query.orderId());
    }

    static QueryOutcome readQueryOutcome(WireReader body) {
        return new QueryOutcome(body.unsigned32());
    }
}
