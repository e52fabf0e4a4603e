package ouzel.simulator.controller;

import java.util.Optional;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Sampler;

/**
 * Judges the permissives on board by one table, {@link Limits#bands()}.
 *
 * <p>To arm, each value must lie in its arm band and have done so for its time. An armed or acting sampler is held
 * against the wider trip band. At the instant of the trigger no value may lie outside its trip band, however short. A
 * permissive without a sensor is met only where a person has attested it in the arm order, and never assumed.
 */
final class PermissiveWatch {
    private static final Permissive[] ALL = Permissive.values();

    private final Instruments instruments;
    private final Band[] bands = new Band[ALL.length];
    private final Permissive[][] ofSampler = new Permissive[Sampler.values().length][];
    private final Lasting[] inArmBand = new Lasting[ALL.length];
    private final Lasting[] outsideTripBand = new Lasting[ALL.length];
    private final int[] values = new int[ALL.length];

    PermissiveWatch(Instruments instruments, Limits limits) {
        this.instruments = instruments;
        for (Permissive permissive : ALL) {
            int index = permissive.ordinal();
            bands[index] = limits.band(permissive);
            inArmBand[index] = new Lasting();
            outsideTripBand[index] = new Lasting();
            values[index] = Readings.ABSENT;
        }
        for (Sampler sampler : Sampler.values()) {
            ofSampler[sampler.ordinal()] = Permissive.of(sampler).toArray(Permissive[]::new);
        }
    }

    /** Takes the newest readings. {@code atRest} tells that nothing was driven: only then the battery is judged. */
    void step(boolean atRest, long nowMillis) {
        for (int index = 0; index < ALL.length; index++) {
            int value = instruments.value(ALL[index]);
            values[index] = value;
            boolean arms = value != Readings.ABSENT && bands[index].arms(value);
            boolean trips = value == Readings.ABSENT || bands[index].trips(value);
            inArmBand[index].note(arms && (atRest || ALL[index] != Permissive.BATTERY), nowMillis);
            outsideTripBand[index].note(trips, nowMillis);
        }
    }

    /** The first permissive, in wire order, that keeps {@code sampler} from being armed. */
    Optional<Unmet> againstArming(Sampler sampler, int attested, long nowMillis) {
        for (Permissive permissive : ofSampler[sampler.ordinal()]) {
            if (!mayArm(permissive, attested, nowMillis)) {
                int measured = fresh(permissive, nowMillis);
                return Optional.of(
                        new Unmet(permissive, measured, band(permissive).armLimitFor(measured)));
            }
        }
        return Optional.empty();
    }

    /** The first permissive that lies outside its trip band at this instant. */
    Optional<Unmet> againstTrigger(Sampler sampler, int attested, long nowMillis) {
        for (Permissive permissive : ofSampler[sampler.ordinal()]) {
            int measured = fresh(permissive, nowMillis);
            boolean holds = instruments.measures(permissive)
                    ? measured != Readings.ABSENT && !band(permissive).trips(measured)
                    : permissive.isIn(attested);
            if (!holds) {
                return Optional.of(unmetTrip(permissive, measured));
            }
        }
        return Optional.empty();
    }

    /** The first of the permissives in {@code bits} that has been outside its trip band for its time. */
    Optional<Unmet> tripped(Sampler sampler, int bits, long nowMillis) {
        for (Permissive permissive : ofSampler[sampler.ordinal()]) {
            if (permissive.isIn(bits) && hasTripped(permissive, nowMillis)) {
                return Optional.of(unmetTrip(permissive, values[permissive.ordinal()]));
            }
        }
        return Optional.empty();
    }

    /** Bits of the permissives met now: by the trip band for the sampler that is armed or acting, else to arm. */
    int met(Optional<Sampler> active, int attested, long nowMillis) {
        int bits = 0;
        for (Permissive permissive : ALL) {
            boolean holds = active.isPresent() && permissive.concerns(active.get())
                    ? holdsForActive(permissive, attested, nowMillis)
                    : mayArm(permissive, attested, nowMillis);
            bits |= holds ? permissive.bit() : 0;
        }
        return bits;
    }

    private boolean holdsForActive(Permissive permissive, int attested, long nowMillis) {
        return instruments.measures(permissive) ? !hasTripped(permissive, nowMillis) : permissive.isIn(attested);
    }

    private boolean mayArm(Permissive permissive, int attested, long nowMillis) {
        if (!instruments.measures(permissive)) {
            return permissive.isIn(attested);
        }
        return !instruments.isStale(nowMillis)
                && inArmBand[permissive.ordinal()].hasLasted(band(permissive).metAfterMillis(), nowMillis);
    }

    private boolean hasTripped(Permissive permissive, long nowMillis) {
        return instruments.measures(permissive)
                && outsideTripBand[permissive.ordinal()].hasLasted(
                        band(permissive).tripsAfterMillis(), nowMillis);
    }

    private int fresh(Permissive permissive, long nowMillis) {
        return instruments.isStale(nowMillis) ? Readings.ABSENT : values[permissive.ordinal()];
    }

    private Unmet unmetTrip(Permissive permissive, int measured) {
        return new Unmet(permissive, measured, band(permissive).tripLimitFor(measured));
    }

    private Band band(Permissive permissive) {
        return bands[permissive.ordinal()];
    }
}
