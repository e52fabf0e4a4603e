package ouzel.simulator.physics;

/**
 * Floating and standing upright. Wall-sided floats, small angles. Source: Barrass and Derrett, Ship Stability for
 * Masters and Mates, chapter 12. Masses in kg, densities in kg/m3, lengths in m.
 */
public final class Buoyancy {
    private Buoyancy() {}

    /** Depth in m to which wall-sided floats of the given waterplane area, m2, sink under {@code kilograms}. */
    public static double draughtMetres(double kilograms, double density, double waterplaneSquareMetres) {
        Checks.notNegative("kilograms", kilograms);
        Checks.positive("density", density);
        return kilograms / (density * Checks.positive("waterplaneSquareMetres", waterplaneSquareMetres));
    }

    /** Height in m of the float's edge over the water; negative if it is under. */
    public static double freeboardMetres(double floatHeightMetres, double draughtMetres) {
        return Checks.positive("floatHeightMetres", floatHeightMetres) - Checks.notNegative("draught", draughtMetres);
    }

    /** Length in m of {@code count} equal round floats that must be wholly under water to carry {@code kilograms}. */
    public static double submergedCylinderMetres(double kilograms, double density, int count, double diameterMetres) {
        Checks.positive("count", count);
        Checks.positive("diameterMetres", diameterMetres);
        return draughtMetres(kilograms, density, count * Math.PI / 4 * diameterMetres * diameterMetres);
    }

    /** Height in m of the metacentre over the centre of buoyancy: waterplane's second moment, m4, by volume, m3. */
    public static double metacentricRadiusMetres(double secondMoment, double displacedCubicMetres) {
        return Checks.positive("secondMoment", secondMoment) / Checks.positive("displaced", displacedCubicMetres);
    }

    /** Second moment in m4, about the middle line, of one box-shaped waterplane. */
    public static double boxSecondMoment(double lengthMetres, double beamMetres) {
        Checks.positive("lengthMetres", lengthMetres);
        Checks.positive("beamMetres", beamMetres);
        return lengthMetres * beamMetres * beamMetres * beamMetres / 12;
    }

    /** Second moment in m4 of two equal box-shaped hulls whose middle lines are {@code spacingMetres} apart. */
    public static double twinSecondMoment(double lengthMetres, double beamMetres, double spacingMetres) {
        double arm = Checks.notNegative("spacingMetres", spacingMetres) / 2;
        return 2 * (boxSecondMoment(lengthMetres, beamMetres) + lengthMetres * beamMetres * arm * arm);
    }
}
