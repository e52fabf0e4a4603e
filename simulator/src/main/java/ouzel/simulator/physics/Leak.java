package ouzel.simulator.physics;

/** A vessel that leaks in proportion to its pressure over ambient: the gauge pressure falls off exponentially. */
public final class Leak {
    private Leak() {}

    /** Gauge pressure, in the unit of {@code gauge}, after {@code seconds} with the given time constant, s. */
    public static double gaugeAfter(double gauge, double timeConstantSeconds, double seconds) {
        Checks.notNegative("gauge", gauge);
        Checks.notNegative("seconds", seconds);
        return gauge * Math.exp(-seconds / Checks.positive("timeConstantSeconds", timeConstantSeconds));
    }

    /** Time constant in s from two readings of gauge pressure {@code seconds} apart, the second below the first. */
    public static double timeConstantSeconds(double gaugeBefore, double gaugeAfter, double seconds) {
        Checks.positive("gaugeAfter", gaugeAfter);
        Checks.within("gaugeBefore", gaugeBefore, Math.nextUp(gaugeAfter), Double.MAX_VALUE);
        return Checks.positive("seconds", seconds) / Math.log(gaugeBefore / gaugeAfter);
    }

    /** Time in s after which half the gauge pressure is left. */
    public static double halfLifeSeconds(double timeConstantSeconds) {
        return Checks.positive("timeConstantSeconds", timeConstantSeconds) * Math.log(2);
    }
}
