package ouzel.simulator.physics;

/**
 * Fresh water, and what a balance says about its volume.
 *
 * <p>Source of the density: M. Tanaka, G. Girard, R. Davis, A. Peuto, N. Bignell, Metrologia 38 (2001) 301, air-free
 * water, 0 to 40 °C.
 */
public final class Water {
    private static final double STANDARD_GRAVITY = 9.80665;
    /** Conventional density of balance weights, kg/m3 (OIML D 28). */
    private static final double WEIGHT_DENSITY = 8_000;

    private Water() {}

    /** Density in kg/m3 at 0 to 40 °C. */
    public static double kilogramsPerCubicMetre(double celsius) {
        Checks.within("celsius", celsius, 0, 40);
        double fromDensest = celsius - 3.983035;
        return 999.974950 * (1 - fromDensest * fromDensest * (celsius + 301.797) / (522_528.9 * (celsius + 69.34881)));
    }

    /** Pressure in Pa under {@code metres} of water, 0 to 1 000 m, of the given density, kg/m3. */
    public static double hydrostaticPascals(double metres, double density) {
        Checks.within("metres", metres, 0, 1_000);
        return Checks.positive("density", density) * STANDARD_GRAVITY * metres;
    }

    /**
     * Volume in mL of water that a balance in air shows as {@code grams}; the air's buoyancy, some 0.1 %, is put back.
     *
     * @param grams reading of the balance, not negative
     * @param celsius temperature of the water, 0 to 40 °C
     * @param airDensity density of the air, 0 to 2 kg/m3
     */
    public static double millilitresWeighedInAir(double grams, double celsius, double airDensity) {
        Checks.notNegative("grams", grams);
        Checks.within("airDensity", airDensity, 0, 2);
        double density = kilogramsPerCubicMetre(celsius);
        return 1_000 * grams * (1 - airDensity / WEIGHT_DENSITY) / (density - airDensity);
    }
}
