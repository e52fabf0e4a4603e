package ouzel.simulator.physics;

/**
 * Forces and gas of a cylinder, and the ground it pushes against. Lengths in mm, pressures over ambient in kPa. Range:
 * bores and rods 0 to 200 mm, strokes 0 to 1 000 mm, 0 to 2 000 kPa. Mechanics only; friction is the caller's.
 */
public final class Pneumatics {
    private static final double KILOPASCALS_PER_ATMOSPHERE = 101.325;

    private Pneumatics() {}

    /** Force in N that pushes the rod out. */
    public static double thrustNewtons(double boreMillimetres, double gaugeKilopascals) {
        return circleSquareMillimetres("boreMillimetres", boreMillimetres) * gauge(gaugeKilopascals) * 1e-3;
    }

    /** Force in N that pulls the rod in, gas acting on the ring around the rod. */
    public static double pullNewtons(double boreMillimetres, double rodMillimetres, double gaugeKilopascals) {
        Checks.within("rodMillimetres", rodMillimetres, 0, boreMillimetres);
        double ring = circleSquareMillimetres("boreMillimetres", boreMillimetres)
                - circleSquareMillimetres("rodMillimetres", rodMillimetres);
        return ring * gauge(gaugeKilopascals) * 1e-3;
    }

    /** Volume in mL swept by one stroke. */
    public static double sweptMillilitres(double boreMillimetres, double strokeMillimetres) {
        Checks.within("strokeMillimetres", strokeMillimetres, 0, 1_000);
        return circleSquareMillimetres("boreMillimetres", boreMillimetres) * strokeMillimetres * 1e-3;
    }

    /** Volume in mL that the gas of one stroke takes at 101.325 kPa and its own temperature, as an ideal gas. */
    public static double freeMillilitres(double boreMillimetres, double strokeMillimetres, double gaugeKilopascals) {
        double ratio = (gauge(gaugeKilopascals) + KILOPASCALS_PER_ATMOSPHERE) / KILOPASCALS_PER_ATMOSPHERE;
        return sweptMillilitres(boreMillimetres, strokeMillimetres) * ratio;
    }

    /**
     * Mass in g of carbon dioxide that fills {@code millilitres} at a pressure over 101.325 kPa; real gas, so 3 to 6
     * % more than the ideal gas law says at 600 to 900 kPa.
     */
    public static double carbonDioxideGrams(double millilitres, double gaugeKilopascals, double kelvin) {
        Checks.notNegative("millilitres", millilitres);
        double pascals = (gauge(gaugeKilopascals) + KILOPASCALS_PER_ATMOSPHERE) * 1_000;
        return CarbonDioxide.gasDensity(pascals, kelvin) * millilitres * 1e-3;
    }

    /**
     * Force in N on a cone driven into ground of a cone index, 0 to 20 MPa: index times base area. Source of the
     * index: ASABE S313.3, soil cone penetrometer.
     */
    public static double coneNewtons(double coneIndexMegapascals, double baseMillimetres) {
        Checks.within("coneIndexMegapascals", coneIndexMegapascals, 0, 20);
        return coneIndexMegapascals * circleSquareMillimetres("baseMillimetres", baseMillimetres);
    }

    private static double circleSquareMillimetres(String name, double diameterMillimetres) {
        Checks.within(name, diameterMillimetres, 0, 200);
        return Math.PI / 4 * diameterMillimetres * diameterMillimetres;
    }

    private static double gauge(double gaugeKilopascals) {
        return Checks.within("gaugeKilopascals", gaugeKilopascals, 0, 2_000);
    }
}
