package ouzel.simulator.radio;

import java.util.List;

/**
 * What a radio does to the chunks it carries. Ratios are shares of all chunks, 0 to 1.
 *
 * @param lossRatio share lost
 * @param meanBurst mean number of chunks lost in a row; at least 1 / (1 - lossRatio), which makes losses independent
 * @param duplicateRatio share that arrives twice
 * @param leastDelayMillis shortest way through the air and both modems, ms
 * @param mostDelayMillis longest, ms
 * @param reorderRatio share that is overtaken by later chunks
 * @param bitErrorRatio share of bits flipped among those that arrive
 * @param holdBackRatio share that a modem keeps for seconds
 * @param mostHoldBackMillis longest time it keeps one, ms; the shortest is half of it
 * @param outages times in which nothing sent arrives
 */
public record Weather(
        double lossRatio,
        double meanBurst,
        double duplicateRatio,
        int leastDelayMillis,
        int mostDelayMillis,
        double reorderRatio,
        double bitErrorRatio,
        double holdBackRatio,
        int mostHoldBackMillis,
        List<Outage> outages) {

    /** A short link in the open. */
    public static final Weather CLEAR = new Weather(0, 1, 0, 15, 30, 0, 0, 0, 0, List.of());
    /** A usual working day: a few losses, mostly single. */
    public static final Weather LIGHT_LOSS = new Weather(0.03, 1.6, 0.005, 20, 80, 0.005, 1e-6, 0, 0, List.of());
    /** At the edge of range: bursts of loss, repeats, chunks overtaken, flipped and held back. */
    public static final Weather ROUGH = new Weather(0.18, 4, 0.03, 40, 250, 0.04, 2e-5, 0.003, 6_000, List.of());
    /** Light loss, and from 30 to 42 s nothing at all. */
    public static final Weather OUTAGE = LIGHT_LOSS.with(List.of(new Outage(30_000, 42_000)));

    /**
     * A time without any link.
     *
     * @param fromMillis its start, ms
     * @param untilMillis its end, ms, not included
     */
    public record Outage(long fromMillis, long untilMillis) {
        /** Refuses an end before the start. */
        public Outage {
            if (untilMillis < fromMillis) {
                throw new IllegalArgumentException(
                        "untilMillis : " + untilMillis + " (expected: not before " + fromMillis + ")");
            }
        }
    }

    /** Refuses ratios and delays that make no sense, with name, value and what was expected. */
    public Weather {
        ratio("lossRatio", lossRatio, 0.95);
        ratio("duplicateRatio", duplicateRatio, 1);
        ratio("reorderRatio", reorderRatio, 1);
        ratio("bitErrorRatio", bitErrorRatio, 0.5);
        ratio("holdBackRatio", holdBackRatio, 1);
        if (!(meanBurst >= leastBurst(lossRatio) && meanBurst <= 10_000)) {
            throw new IllegalArgumentException(
                    "meanBurst : " + meanBurst + " (expected: " + leastBurst(lossRatio) + " to 10000)");
        }
        if (leastDelayMillis < 0 || mostDelayMillis < leastDelayMillis || mostHoldBackMillis < 0) {
            throw new IllegalArgumentException("delays : " + leastDelayMillis + ", " + mostDelayMillis + ", "
                    + mostHoldBackMillis + " (expected: not negative, least before most)");
        }
        outages = List.copyOf(outages);
    }

    /** The mean burst that independent losses give. */
    public static double leastBurst(double lossRatio) {
        return 1 / (1 - lossRatio);
    }

    /** This weather with other outages. */
    public Weather with(List<Outage> otherOutages) {
        return new Weather(
                lossRatio,
                meanBurst,
                duplicateRatio,
                leastDelayMillis,
                mostDelayMillis,
                reorderRatio,
                bitErrorRatio,
                holdBackRatio,
                mostHoldBackMillis,
                otherOutages);
    }

    /** True if nothing gets through at {@code nowMillis}. */
    public boolean isOut(long nowMillis) {
        for (Outage outage : outages) {
            if (nowMillis >= outage.fromMillis && nowMillis < outage.untilMillis) {
                return true;
            }
        }
        return false;
    }

    private static void ratio(String name, double value, double greatest) {
        if (!(value >= 0 && value <= greatest)) {
            throw new IllegalArgumentException(name + " : " + value + " (expected: 0 to " + greatest + ")");
        }
    }
}
