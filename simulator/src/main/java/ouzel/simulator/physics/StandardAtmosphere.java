package ouzel.simulator.physics;

/**
 * The standard atmosphere's lowest layer, 0 to 11 000 m of geopotential height.
 *
 * <p>Temperature falls by 6.5 K per km from 288.15 K; pressure follows from hydrostatic balance, density from the ideal
 * gas law. Source: ISO 2533:1975, identical in this layer with the US Standard Atmosphere 1976.
 */
public final class StandardAtmosphere {
    /** Pressure at height zero, Pa. */
    public static final double SEA_LEVEL_PASCALS = 101_325;
    /** Temperature at height zero, K. */
    public static final double SEA_LEVEL_KELVIN = 288.15;
    /** Top of the layer, geopotential metres. */
    public static final double TOP_METRES = 11_000;

    private static final double LAPSE_KELVIN_PER_METRE = 0.0065;
    private static final double STANDARD_GRAVITY = 9.80665;
    private static final double AIR_GAS_CONSTANT = 287.05287;
    private static final double EXPONENT = STANDARD_GRAVITY / (AIR_GAS_CONSTANT * LAPSE_KELVIN_PER_METRE);
    private static final double EARTH_RADIUS_METRES = 6_356_766;

    private StandardAtmosphere() {}

    /** Temperature in K at a geopotential height of 0 to 11 000 m. */
    public static double kelvin(double geopotentialMetres) {
        Checks.within("geopotentialMetres", geopotentialMetres, 0, TOP_METRES);
        return SEA_LEVEL_KELVIN - LAPSE_KELVIN_PER_METRE * geopotentialMetres;
    }

    /** Pressure in Pa at a geopotential height of 0 to 11 000 m. */
    public static double pascals(double geopotentialMetres) {
        return SEA_LEVEL_PASCALS * Math.pow(kelvin(geopotentialMetres) / SEA_LEVEL_KELVIN, EXPONENT);
    }

    /** Density in kg/m3 at a geopotential height of 0 to 11 000 m. */
    public static double kilogramsPerCubicMetre(double geopotentialMetres) {
        return pascals(geopotentialMetres) / (AIR_GAS_CONSTANT * kelvin(geopotentialMetres));
    }

    /** Geometric height in m of a geopotential height of 0 to 11 000 m. */
    public static double geometricMetres(double geopotentialMetres) {
        Checks.within("geopotentialMetres", geopotentialMetres, 0, TOP_METRES);
        return EARTH_RADIUS_METRES * geopotentialMetres / (EARTH_RADIUS_METRES - geopotentialMetres);
    }
}
