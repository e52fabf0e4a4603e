package ouzel.protocol.message;

import java.util.List;

/**
 * The payload as it stands, ten times a second.
 *
 * @param session public number of the session in force, unsigned 32 bits, 0 if none
 * @param states one state per sampler, in the order of {@link Sampler}
 * @param armLifeMillis time left of the arming token, 0 if nothing is armed
 * @param permissivesMet bits of the permissives that hold on board right now
 * @param newestEvent number of the newest event, 0 if there was none yet, unsigned 32 bits
 * @param oldestEvent number of the oldest event still kept, 0 if all are acknowledged, unsigned 32 bits
 * @param refusedFrames frames dropped for a wrong tag, counter, address or form since start, stops at 65 535
 * @param meteredMillilitres dose metered on board in the running or last draw, mL
 * @param runMillis time since the running pump or valve was switched on, 0 if none runs, stops at 65 535
 * @param strokesUsed strokes taken from this cartridge
 * @param bootCount starts of the controller, low 16 bits
 * @param readings the sensors
 */
public record Status(
        long session,
        List<SamplerState> states,
        int armLifeMillis,
        int permissivesMet,
        long newestEvent,
        long oldestEvent,
        int refusedFrames,
        int meteredMillilitres,
        int runMillis,
        int strokesUsed,
        int bootCount,
        Readings readings)
        implements Downlink {

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public Status {
        Checks.unsigned32("session", session);
        Checks.range("states.size", states.size(), Sampler.values().length, Sampler.values().length);
        Checks.unsigned16("armLifeMillis", armLifeMillis);
        Checks.unsigned32("newestEvent", newestEvent);
        Checks.unsigned32("oldestEvent", oldestEvent);
        Checks.unsigned16("refusedFrames", refusedFrames);
        Checks.unsigned16("meteredMillilitres", meteredMillilitres);
        Checks.unsigned16("runMillis", runMillis);
        Checks.unsigned8("strokesUsed", strokesUsed);
        Checks.unsigned16("bootCount", bootCount);
        states = List.copyOf(states);
    }

    /** The state of one sampler. */
    public SamplerState state(Sampler sampler) {
        return states.get(sampler.ordinal());
    }
}
