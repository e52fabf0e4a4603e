package ouzel.simulator.physics;

/**
 * A coil whose plunger does not move: current rises and falls with the time constant L/R. Source: any text on
 * electrical circuits.
 *
 * @param ohms resistance, above 0
 * @param henries inductance, above 0
 */
public record Coil(double ohms, double henries) {
    public Coil {
        Checks.positive("ohms", ohms);
        Checks.positive("henries", henries);
    }

    /** Time constant, s. */
    public double timeConstantSeconds() {
        return henries / ohms;
    }

    /** Current in A, {@code seconds} after {@code volts} were switched on. */
    public double risingAmperes(double volts, double seconds) {
        Checks.notNegative("seconds", seconds);
        return -Checks.notNegative("volts", volts) / ohms * Math.expm1(-seconds / timeConstantSeconds());
    }

    /** Time in s until the current passes {@code amperes}, which must be below volts / ohms. */
    public double secondsToReach(double amperes, double volts) {
        double settled = Checks.positive("volts", volts) / ohms;
        Checks.within("amperes", amperes, 0, Math.nextDown(settled));
        return -timeConstantSeconds() * Math.log1p(-amperes / settled);
    }

    /** Current in A, {@code seconds} after a coil carrying {@code amperes} was shorted by its diode. */
    public double fallingAmperes(double amperes, double seconds) {
        Checks.notNegative("seconds", seconds);
        return Checks.notNegative("amperes", amperes) * Math.exp(-seconds / timeConstantSeconds());
    }
}
