package ouzel.app.estimate;

/**
 * A running estimate of what a pump has drawn, one current sample at a time.
 *
 * <p>The first {@value #BLANKED_SAMPLES} samples are inrush and tell nothing. From there on the smoothed current is
 * held against the middle between the pump's dry and wet level at the present voltage; fill counts only while the pump
 * is wet. A sample stands for 10 ms.
 *
 * @param samples samples seen
 * @param smoothed smoothed current, mA
 * @param wetRun samples in a row on the wet side
 * @param dryRun samples in a row on the dry side
 * @param wet true while the pump is taken to draw its sample
 * @param primedAt sample at which it was first wet, -1 before
 * @param millilitres amount drawn through the pump, mL
 * @param wetSamples samples counted as wet
 * @param wetCharge sum of the smoothed current over those, mA
 */
public record DrawEstimate(
        int samples,
        double smoothed,
        int wetRun,
        int dryRun,
        boolean wet,
        int primedAt,
        double millilitres,
        int wetSamples,
        double wetCharge) {

    /** Before the first sample. */
    public static final DrawEstimate START = new DrawEstimate(0, 0, 0, 0, false, -1, 0, 0, 0);

    /** Inrush of a small brushed motor is over by then (400 ms). */
    static final int BLANKED_SAMPLES = 40;
    /** A level must hold this long before it is believed (150 ms). */
    static final int BELIEVED_AFTER = 15;

    private static final double SECONDS_PER_SAMPLE = 0.01;
    /** Weight of a new sample: settles within about 100 ms, long against brush ripple. */
    private static final double SMOOTHING = 0.2;
    /** Standard uncertainty of the instant of priming, s. */
    private static final double PRIMING_SECONDS = 0.1;
    /** Standard uncertainty of the tube's volume, as a share of it. */
    private static final double LINE_UNCERTAINTY = 0.2;

    /**
     * The estimate after one more sample.
     *
     * @param pump the pump's model
     * @param milliamps the sample, mA
     * @param millivolts pack voltage then, mV
     */
    public DrawEstimate next(PumpModel pump, int milliamps, int millivolts) {
        int count = samples + 1;
        double level = samples == 0 ? milliamps : smoothed + SMOOTHING * (milliamps - smoothed);
        if (count <= BLANKED_SAMPLES && pump.primes()) {
            return new DrawEstimate(count, level, 0, 0, false, -1, 0, 0, 0);
        }
        boolean above = level > (pump.primes() ? pump.threshold(millivolts) : pump.threshold(millivolts) / 2);
        int wetFor = above ? wetRun + 1 : 0;
        int dryFor = above ? 0 : dryRun + 1;
        boolean nowWet = wet ? dryFor < BELIEVED_AFTER : wetFor >= BELIEVED_AFTER;
        double drawn = millilitres;
        if (nowWet) {
            // The samples it took to believe the level were wet too.
            int credited = wet ? 1 : wetFor;
            drawn += credited * SECONDS_PER_SAMPLE * pump.flowAt(millivolts);
        }
        return new DrawEstimate(
                count,
                level,
                wetFor,
                dryFor,
                nowWet,
                nowWet && primedAt < 0 ? count - wetFor : primedAt,
                drawn,
                wetSamples + (nowWet ? 1 : 0),
                wetCharge + (nowWet ? level : 0));
    }

    /** True once the pump was seen to draw its sample. */
    public boolean isPrimed() {
        return primedAt >= 0;
    }

    /** Time from switching on to priming, s; 0 before. */
    public double primedAfterSeconds() {
        return Math.max(0, primedAt) * SECONDS_PER_SAMPLE;
    }

    /** Mean current while wet, mA; 0 if it never was. */
    public double meanWetMilliamps() {
        return wetSamples == 0 ? 0 : wetCharge / wetSamples;
    }

    /**
     * What has reached the container, with its uncertainty: the flow's, the instant of priming's and the tube's, taken
     * as independent.
     *
     * @param missing samples that were filled in because they never arrived
     */
    public Amount amount(PumpModel pump, int missing) {
        double flowPart = millilitres * pump.relativeUncertainty();
        double primingPart = isPrimed() ? pump.flow() * PRIMING_SECONDS : 0;
        double missingPart = missing * SECONDS_PER_SAMPLE * pump.flow() * 0.3;
        double linePart = Math.min(millilitres, pump.lineMillilitres()) * LINE_UNCERTAINTY;
        double variance =
                flowPart * flowPart + primingPart * primingPart + linePart * linePart + missingPart * missingPart;
        return new Amount(Math.max(0, millilitres - pump.lineMillilitres()), Math.sqrt(variance));
    }
}
