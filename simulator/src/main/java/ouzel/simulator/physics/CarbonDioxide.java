package ouzel.simulator.physics;

/**
 * Carbon dioxide in a cartridge and behind a regulator.
 *
 * <p>Saturation: the ancillary equations (3.13) to (3.15) of R. Span and W. Wagner, J. Phys. Chem. Ref. Data 25 (1996)
 * 1509, from the triple point to the critical point. Outside there is no vapour pressure, so the functions refuse.
 *
 * <p>Gas: pressure from density with the second virial coefficient, which was tabulated from the same authors' full
 * equation of state. Against that equation it is good to 0.1 % up to 1 MPa and 0.6 % up to 2 MPa at 20 °C. Range:
 * 253.15 to 323.15 K, at most 2 MPa; the coefficient above 303.15 K is extrapolated by its last slope.
 */
public final class CarbonDioxide {
    /** Critical temperature, K. */
    public static final double CRITICAL_KELVIN = 304.1282;
    /** Critical pressure, Pa. */
    public static final double CRITICAL_PASCALS = 7_377_300;
    /** Critical density, kg/m3. */
    public static final double CRITICAL_DENSITY = 467.6;
    /** Triple-point temperature, K; solid below. */
    public static final double TRIPLE_KELVIN = 216.592;
    /** Molar mass, g/mol. */
    public static final double MOLAR_GRAMS = 44.0098;
    /** Specific gas constant, J/(kg K). */
    public static final double GAS_CONSTANT = 188.9241;
    /** Highest pressure at which the virial equation is used, Pa. */
    public static final double MOST_VIRIAL_PASCALS = 2_000_000;

    private static final double COLDEST_VIRIAL_KELVIN = 253.15;
    private static final double WARMEST_VIRIAL_KELVIN = 323.15;
    /** Second virial coefficient, cm3/mol, at 253.15 K and every 10 K above. */
    private static final double[] SECOND_VIRIAL = {-178.81, -163.66, -150.30, -138.46, -127.88, -118.39};

    private CarbonDioxide() {}

    /** Pressure in Pa of liquid and vapour in balance at 216.592 to 304.1282 K. */
    public static double saturationPascals(double kelvin) {
        return CRITICAL_PASCALS * Math.exp(CRITICAL_KELVIN / kelvin * pressureSum(distance(kelvin)));
    }

    /** Density in kg/m3 of the liquid in balance with its vapour at 216.592 to 304.1282 K. */
    public static double liquidDensity(double kelvin) {
        double theta = distance(kelvin);
        return CRITICAL_DENSITY
                * Math.exp(1.9245108 * Math.pow(theta, 0.34)
                        - 0.62385555 * Math.sqrt(theta)
                        - 0.32731127 * Math.pow(theta, 10.0 / 6)
                        + 0.39245142 * Math.pow(theta, 11.0 / 6));
    }

    /** Density in kg/m3 of the vapour in balance with its liquid at 216.592 to 304.1282 K. */
    public static double vapourDensity(double kelvin) {
        double theta = distance(kelvin);
        return CRITICAL_DENSITY
                * Math.exp(-1.7074879 * Math.pow(theta, 0.34)
                        - 0.82274670 * Math.sqrt(theta)
                        - 4.6008549 * theta
                        - 10.111178 * Math.pow(theta, 7.0 / 3)
                        - 29.742252 * Math.pow(theta, 14.0 / 3));
    }

    /**
     * Heat in J/kg that boils the liquid off at 216.592 to 303.65 K, by Clapeyron's equation from the three ancillary
     * equations; within 1 % of the full equation of state up to 298 K.
     */
    public static double latentHeat(double kelvin) {
        Checks.within("kelvin", kelvin, TRIPLE_KELVIN, CRITICAL_KELVIN - 0.478);
        double theta = distance(kelvin);
        double slope = -saturationPascals(kelvin)
                / kelvin
                * (CRITICAL_KELVIN / kelvin * pressureSum(theta) + pressureSumSlope(theta));
        return kelvin * (1 / vapourDensity(kelvin) - 1 / liquidDensity(kelvin)) * slope;
    }

    /** Second virial coefficient in cm3/mol at 253.15 to 323.15 K, by straight lines between tabulated points. */
    public static double secondVirial(double kelvin) {
        Checks.within("kelvin", kelvin, COLDEST_VIRIAL_KELVIN, WARMEST_VIRIAL_KELVIN);
        double place = (kelvin - COLDEST_VIRIAL_KELVIN) / 10;
        int left = Math.min((int) place, SECOND_VIRIAL.length - 2);
        return SECOND_VIRIAL[left] + (place - left) * (SECOND_VIRIAL[left + 1] - SECOND_VIRIAL[left]);
    }

    /** Absolute pressure in Pa of the gas at a density in kg/m3, 253.15 to 323.15 K. */
    public static double gasPascals(double density, double kelvin) {
        Checks.within("density", density, 0, 60);
        return gasPascals(density, kelvin, secondVirial(kelvin));
    }

    /**
     * Density in kg/m3 of the gas at an absolute pressure of 0 to 2 MPa and 253.15 to 323.15 K; the root of the virial
     * equation that belongs to the gas.
     */
    public static double gasDensity(double pascals, double kelvin) {
        Checks.within("pascals", pascals, 0, MOST_VIRIAL_PASCALS);
        double perMole = secondVirial(kelvin) * 1e-3 / MOLAR_GRAMS;
        double ideal = pascals / (GAS_CONSTANT * kelvin);
        return 2 * ideal / (1 + Math.sqrt(1 + 4 * perMole * ideal));
    }

    /** As {@link #gasPascals(double, double)} without its checks, the virial coefficient in cm3/mol being known. */
    public static double gasPascals(double density, double kelvin, double secondVirial) {
        return density * GAS_CONSTANT * kelvin * (1 + secondVirial * 1e-3 / MOLAR_GRAMS * density);
    }

    private static double distance(double kelvin) {
        Checks.within("kelvin", kelvin, TRIPLE_KELVIN, CRITICAL_KELVIN);
        return 1 - kelvin / CRITICAL_KELVIN;
    }

    private static double pressureSum(double theta) {
        double square = theta * theta;
        return -7.0602087 * theta
                + 1.9391218 * theta * Math.sqrt(theta)
                - 1.6463597 * square
                - 3.2995634 * square * square;
    }

    private static double pressureSumSlope(double theta) {
        return -7.0602087
                + 1.5 * 1.9391218 * Math.sqrt(theta)
                - 2 * 1.6463597 * theta
                - 4 * 3.2995634 * theta * theta * theta;
    }
}
