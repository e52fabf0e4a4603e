package ouzel.simulator.plant;

import java.util.Set;

/**
 * The film gas bag: slack up to its full volume, then stiff.
 *
 * <p>It holds an amount of gas, kept as the volume it would take at 20 °C and 101 325 Pa, so that it grows when the
 * aircraft climbs or the sun warms it. The film's pull is a small part of the ambient pressure and is left out of the
 * volume, which makes it at most 1 % too large before the bag bursts.
 */
final class Bag {
    private static final double REFERENCE_PASCALS = 101_325;
    private static final double REFERENCE_KELVIN = 293.15;
    private static final double ZERO_CELSIUS = 273.15;
    /** Flow through a torn seam, mL/s for each Pa. */
    private static final double TEAR = 0.5;
    /** The same through a hole. */
    private static final double HOLE = 0.02;
    /** The same through a sound seam. */
    private static final double SEAM = 2e-6;

    private final PayloadProfile.AirSampler figures;
    private final Set<Fault> faults;
    private double referenceMillilitres;
    private double millilitres;
    private double pascals;
    private boolean burst;

    Bag(PayloadProfile.AirSampler figures, Set<Fault> faults) {
        this.figures = figures;
        this.faults = faults;
    }

    /** Takes in {@code added} mL at ambient conditions. */
    void blow(double added, double ambientPascals, double celsius) {
        referenceMillilitres += added * toReference(ambientPascals, celsius);
    }

    /** Finds volume and pressure at the ambient conditions, and lets leak what leaks. */
    void step(double ambientPascals, double celsius) {
        double scale = toReference(ambientPascals, celsius);
        millilitres = referenceMillilitres / scale;
        double excess = millilitres - figures.bagMillilitres();
        double slack = figures.slackPascals() * Math.min(1, millilitres / figures.bagMillilitres());
        pascals = slack + Math.max(0, excess) * figures.stiffnessPascalsPerMillilitre();
        burst |= pascals > figures.burstPascals();
        referenceMillilitres = Math.max(0, referenceMillilitres - pascals * conductance() * Plant.STEP_SECONDS * scale);
    }

    private double conductance() {
        if (burst) {
            return TEAR;
        }
        return faults.contains(Fault.BAG_LEAK) ? HOLE : SEAM;
    }

    private static double toReference(double ambientPascals, double celsius) {
        return ambientPascals / REFERENCE_PASCALS * (REFERENCE_KELVIN / (celsius + ZERO_CELSIUS));
    }

    /** Puts a fresh, flat bag in place. */
    void replace() {
        referenceMillilitres = 0;
        millilitres = 0;
        pascals = 0;
        burst = false;
    }

    /** Volume at ambient conditions, mL. */
    double millilitres() {
        return millilitres;
    }

    /** Volume at 20 °C and 101 325 Pa, mL. */
    double referenceMillilitres() {
        return referenceMillilitres;
    }

    /** Pressure over ambient, Pa. */
    double pascals() {
        return pascals;
    }

    boolean isBurst() {
        return burst;
    }
}
