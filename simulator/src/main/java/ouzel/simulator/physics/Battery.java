package ouzel.simulator.physics;

/** Voltage under load and charge drawn; for cells whose charge does not depend on the rate of discharge. */
public final class Battery {
    private Battery() {}

    /** Terminal voltage in V under a current, A, by Ohm's law; never below 0. */
    public static double loadedVolts(double openVolts, double amperes, double ohms) {
        Checks.notNegative("openVolts", openVolts);
        Checks.notNegative("amperes", amperes);
        return Math.max(0, openVolts - amperes * Checks.notNegative("ohms", ohms));
    }

    /** Charge in mAh left of {@code milliampHours} after {@code amperes} flowed for {@code seconds}; never below 0. */
    public static double milliampHoursLeft(double milliampHours, double amperes, double seconds) {
        Checks.notNegative("milliampHours", milliampHours);
        Checks.notNegative("amperes", amperes);
        return Math.max(0, milliampHours - amperes * Checks.notNegative("seconds", seconds) / 3.6);
    }
}
