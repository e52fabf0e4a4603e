package ouzel.app.estimate;

/**
 * What the coil current of one valve opening says.
 *
 * <p>The current of a coil rises with its time constant until the plunger starts to move; the moving plunger induces a
 * voltage against it, so the current dips until the plunger is seated, then rises again, slower, to its steady value
 * (Balakrishnan and Navaneeth Kumar, "Detection of Plunger Movement in DC Solenoids", 2015). No dip: nothing moved.
 *
 * @param moved true if the dip was seen
 * @param dipMillis when the plunger seated, ms after switching on; 0 if it did not
 * @param dipMilliamps depth of the dip below the peak before it, mA; 0 if there is none
 * @param steadyMilliamps mean current of the last 10 ms, mA
 */
public record ValveReading(boolean moved, double dipMillis, double dipMilliamps, double steadyMilliamps) {
    /** A dip shallower than this share of the steady current is noise: a plunger gives about twice as much. */
    private static final double LEAST_DIP = 0.03;

    private static final double MILLIS_PER_SAMPLE = 0.5;
    private static final int STEADY_SAMPLES = 20;

    /**
     * Reads a whole capture.
     *
     * @param coil coil current, mA, 2 000 samples a second from switching on
     */
    public static ValveReading of(Series coil) {
        int length = coil.length();
        double steady = mean(coil, Math.max(0, length - STEADY_SAMPLES), length);
        double peak = 0;
        double deepest = 0;
        int seatedAt = 0;
        for (int i = 1; i + 1 < length; i++) {
            double level = mean(coil, i - 1, i + 2);
            peak = Math.max(peak, level);
            if (peak - level > deepest) {
                deepest = peak - level;
                seatedAt = i;
            }
        }
        boolean moved = steady > 0 && deepest >= LEAST_DIP * steady;
        return new ValveReading(moved, moved ? seatedAt * MILLIS_PER_SAMPLE : 0, moved ? deepest : 0, steady);
    }

    private static double mean(Series coil, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += coil.at(i);
        }
        return to == from ? 0 : sum / (to - from);
    }
}
