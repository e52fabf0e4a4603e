package ouzel.simulator.plant;

import java.util.Set;

/** The water sample's jar: holds so much, spills the rest over its vent, and closes a level switch near the brim. */
final class Jar {
    /** Height of the switch's own hysteresis, mL. */
    private static final double HYSTERESIS_MILLILITRES = 6;
    /** How much water sloshes past the float for each degree of tilt, mL. */
    private static final double SLOSH_MILLILITRES_PER_DEGREE = 0.8;

    private final PayloadProfile.WaterSampler figures;
    private final Set<Fault> faults;
    private double millilitres;
    private double spilledMillilitres;
    private boolean switchClosed;

    Jar(PayloadProfile.WaterSampler figures, Set<Fault> faults) {
        this.figures = figures;
        this.faults = faults;
    }

    /** Takes in {@code added} mL; what does not fit is spilled. */
    void pour(double added) {
        double wanted = millilitres + added;
        millilitres = Math.min(wanted, figures.jarMillilitres());
        spilledMillilitres += wanted - millilitres;
    }

    /** Moves the level switch with the water and its sloshing, {@code sway} being the tilt about its mean, degrees. */
    void step(double sway) {
        double level = millilitres + sway * SLOSH_MILLILITRES_PER_DEGREE;
        double threshold = figures.levelSwitchMillilitres() - (switchClosed ? HYSTERESIS_MILLILITRES : 0);
        switchClosed = level >= threshold;
    }

    boolean isSwitchClosed() {
        if (faults.contains(Fault.LEVEL_SWITCH_STUCK_CLOSED)) {
            return true;
        }
        return switchClosed && !faults.contains(Fault.LEVEL_SWITCH_STUCK_OPEN);
    }

    /** Puts a fresh jar in place. */
    void replace() {
        millilitres = 0;
        switchClosed = false;
    }

    double millilitres() {
        return millilitres;
    }

    double spilledMillilitres() {
        return spilledMillilitres;
    }
}
