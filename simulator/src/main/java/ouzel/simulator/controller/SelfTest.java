package ouzel.simulator.controller;

import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Sampler;

/**
 * The start-up test: every fitted sensor gives a plausible value and nothing draws current while nothing is driven, for
 * {@value #LASTING_MILLIS} ms on end. Passed once, it stays passed until the next start.
 */
final class SelfTest {
    private static final int LASTING_MILLIS = 500;
    /** Well over the converters' noise, well under the current of the smallest motor. */
    private static final int UNDRIVEN_MILLIAMPS = 100;

    private final Lasting good = new Lasting();
    private boolean passed;

    boolean hasPassed() {
        return passed;
    }

    void step(Instruments instruments, long nowMillis) {
        passed = passed || good.lasts(isGood(instruments), LASTING_MILLIS, nowMillis);
    }

    private boolean isGood(Instruments instruments) {
        for (Sampler sampler : Sampler.values()) {
            if (sampler.isPumped() && instruments.pumpMilliamps(sampler) > UNDRIVEN_MILLIAMPS) {
                return false;
            }
        }
        for (Permissive permissive : Permissive.values()) {
            if (instruments.measures(permissive) && instruments.value(permissive) == Readings.ABSENT) {
                return false;
            }
        }
        return instruments.valveMilliamps().isEmpty();
    }
}
