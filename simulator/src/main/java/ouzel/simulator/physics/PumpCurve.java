package ouzel.simulator.physics;

/**
 * A displacement pump's flow against back pressure, as a straight line: the usual idealisation for diaphragm pumps.
 *
 * @param freeFlow flow without back pressure, any unit, above 0
 * @param stallPressure back pressure at which flow ends, any unit, above 0
 */
public record PumpCurve(double freeFlow, double stallPressure) {
    public PumpCurve {
        Checks.positive("freeFlow", freeFlow);
        Checks.positive("stallPressure", stallPressure);
    }

    /** Flow in the unit of {@link #freeFlow()}; never negative, because the pump's flaps close. */
    public double flow(double backPressure) {
        return freeFlow * Math.max(0, 1 - backPressure / stallPressure);
    }

    /** Mean flow in L/min that filled {@code millilitres} in {@code seconds}. */
    public static double meanLitresPerMinute(double millilitres, double seconds) {
        return Checks.notNegative("millilitres", millilitres) / Checks.positive("seconds", seconds) * 0.06;
    }
}
