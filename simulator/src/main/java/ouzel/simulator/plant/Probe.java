package ouzel.simulator.plant;

import java.util.Set;
import ouzel.simulator.physics.CarbonDioxide;
import ouzel.simulator.physics.Pneumatics;

/**
 * The soil probe: a gas piston against a return spring and the ground.
 *
 * <p>The chamber behind the piston fills through the valve and vents when the valve closes. The piston's mass is small
 * against its damping, so its speed follows the sum of forces. The ground resists a new depth with its cone index times
 * the tip's area, hardly resists a return, and does not resist in a hole already made; lifting off leaves the hole
 * behind. Lengths in mm, forces in N, masses in g.
 */
final class Probe {
    /** Parts into which a step is cut while gas flows. */
    static final int SUBSTEPS = 20;
    /** Length of one part, s. */
    static final double SUBSTEP_SECONDS = Plant.STEP_SECONDS / SUBSTEPS;

    /** Flow from line to chamber, g/s for each Pa. */
    private static final double VALVE = 2e-5;
    /** Flow from chamber to the open, g/s for each Pa. */
    private static final double VENT = 5e-6;
    /** The home switch is closed this far out. */
    private static final double HOME_MILLIMETRES = 1.5;
    /** Depth over which the tip's cone comes to bear. */
    private static final double CONE_MILLIMETRES = 8;
    /** A stroke is complete when the probe came this near to its end. */
    private static final double COMPLETE_SHARE = 0.97;
    /** The tip's mouth passes the crust before soil enters. */
    private static final double MOUTH_MILLIMETRES = 15;
    /** Below this the chamber counts as vented, Pa. */
    private static final double SETTLED_PASCALS = 50;
    /** The ground's hold on a returning probe, as a share of its resistance. */
    private static final double WITHDRAWAL_SHARE = 0.03;

    private final PayloadProfile.Probe figures;
    private final Set<Fault> faults;
    private final GasSupply supply;
    private final double pistonSquareMillimetres;
    private double chamberGrams;
    private double chamberPascals;
    private double extension;
    private double deepest;
    private double sampleGrams;
    private double ventedGrams;
    private double peakReaction;
    private double takenGrams;
    private int strokesStarted;
    private int strokesCompleted;
    private double settledAtPascals;
    private boolean away;
    private boolean reachedEnd;

    Probe(PayloadProfile.Probe figures, GasSupply supply, Set<Fault> faults, Surroundings start) {
        this.figures = figures;
        this.supply = supply;
        this.faults = faults;
        this.pistonSquareMillimetres = Math.PI / 4 * figures.boreMillimetres() * figures.boreMillimetres();
        this.chamberGrams = restingGrams(start.pressurePascals());
    }

    private void settle(double ambientPascals) {
        if (chamberPascals != 0 || ambientPascals != settledAtPascals) {
            double resting = restingGrams(ambientPascals);
            ventedGrams += chamberGrams - resting;
            chamberGrams = resting;
            chamberPascals = 0;
            settledAtPascals = ambientPascals;
        }
    }

    private double restingGrams(double ambientPascals) {
        return CarbonDioxide.gasDensity(ambientPascals, supply.kelvin()) * figures.deadMillilitres() * 1e-3;
    }

    /** Moves for one step with the valve open or closed. Does next to nothing while the probe rests at home. */
    void step(boolean valveOpen, Surroundings surroundings) {
        supply.warm(surroundings);
        boolean onGround = surroundings.place() == Surroundings.Place.ON_GROUND;
        deepest = onGround ? deepest : 0;
        if (!valveOpen && extension <= 0 && Math.abs(chamberPascals) < SETTLED_PASCALS) {
            supply.refillStep();
            settle(surroundings.pressurePascals());
            return;
        }
        double resistance = onGround
                ? Pneumatics.coneNewtons(surroundings.soilConeIndexMegapascals(), figures.tipMillimetres())
                : 0;
        for (int part = 0; part < SUBSTEPS; part++) {
            flow(valveOpen, surroundings.pressurePascals());
            supply.refill();
            move(resistance);
        }
        countStrokes(onGround);
    }

    private void flow(boolean valveOpen, double ambientPascals) {
        if (valveOpen) {
            double gained = (supply.linePascals() - chamberPascals) * VALVE * SUBSTEP_SECONDS;
            supply.give(gained);
            takenGrams += gained;
            chamberGrams += gained;
        } else {
            double lost = Math.min(chamberGrams, chamberPascals * VENT * SUBSTEP_SECONDS);
            ventedGrams += lost;
            chamberGrams -= lost;
        }
        double millilitres = figures.deadMillilitres() + pistonSquareMillimetres * extension * 1e-3;
        double density = chamberGrams / millilitres * 1_000;
        chamberPascals = CarbonDioxide.gasPascals(density, supply.kelvin(), supply.secondVirial()) - ambientPascals;
    }

    private void move(double resistance) {
        boolean stuck = faults.contains(Fault.PROBE_STUCK_OUT) && extension > HOME_MILLIMETRES;
        double driving = chamberPascals * 1e-6 * pistonSquareMillimetres
                - figures.springPreloadNewtons()
                - figures.springNewtonsPerMillimetre() * extension;
        double ground = ground(driving, resistance);
        peakReaction = Math.max(peakReaction, ground);
        double metresPerSecond = (driving - ground) / figures.dampingNewtonSecondsPerMetre();
        double wanted = extension + (stuck ? Math.max(0, metresPerSecond) : metresPerSecond) * 1e3 * SUBSTEP_SECONDS;
        extension = Math.max(0, Math.min(figures.strokeMillimetres(), wanted));
    }

    private double ground(double driving, double resistance) {
        if (driving > 0) {
            boolean fresh = extension >= deepest;
            return fresh ? Math.min(driving, resistance * Math.min(1, extension / CONE_MILLIMETRES)) : 0;
        }
        return Math.max(driving, -resistance * WITHDRAWAL_SHARE);
    }

    private void countStrokes(boolean onGround) {
        if (onGround && extension > deepest) {
            double gained = Math.max(0, extension - Math.max(deepest, MOUTH_MILLIMETRES));
            sampleGrams = Math.min(fullTipGrams(), sampleGrams + gained * figures.coreGramsPerMillimetre());
            deepest = extension;
        }
        if (!away && !isHome()) {
            away = true;
            reachedEnd = false;
            strokesStarted++;
        }
        reachedEnd |= extension >= COMPLETE_SHARE * figures.strokeMillimetres();
        if (away && isHome()) {
            away = false;
            strokesCompleted += reachedEnd ? 1 : 0;
        }
    }

    private double fullTipGrams() {
        return (figures.strokeMillimetres() - MOUTH_MILLIMETRES) * figures.coreGramsPerMillimetre();
    }

    /** Puts a fresh tip on a probe vented and pushed home by hand. */
    void replaceTip() {
        double resting = restingGrams(supply.ambientPascals());
        ventedGrams += chamberGrams - resting;
        chamberGrams = resting;
        chamberPascals = 0;
        extension = 0;
        deepest = 0;
        sampleGrams = 0;
        away = false;
        reachedEnd = false;
        peakReaction = 0;
    }

    boolean isHome() {
        return extension < HOME_MILLIMETRES;
    }

    double extension() {
        return extension;
    }

    double sampleGrams() {
        return sampleGrams;
    }

    double chamberGrams() {
        return chamberGrams;
    }

    double chamberPascals() {
        return chamberPascals;
    }

    double ventedGrams() {
        return ventedGrams;
    }

    /** Gas that passed the valve since the start. */
    double takenGrams() {
        return takenGrams;
    }

    /** Greatest push against the ground since the tip was changed: what the aircraft's weight must hold down. */
    double peakReaction() {
        return peakReaction;
    }

    int strokesStarted() {
        return strokesStarted;
    }

    /** Strokes that reached the end and came home. */
    int strokesCompleted() {
        return strokesCompleted;
    }
}
