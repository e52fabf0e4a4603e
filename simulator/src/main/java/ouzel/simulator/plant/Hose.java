package ouzel.simulator.plant;

import java.util.Arrays;

/**
 * A tube in which slugs of water and air follow each other without mixing.
 *
 * <p>A ring of equal cells, each with its share of water. What is pushed in at one end leaves at the other one tube
 * volume later; nothing is lost or made. Volumes in mL.
 */
final class Hose {
    private static final int CELLS = 32;

    private final double[] wetShare = new double[CELLS];
    private final double cellMillilitres;
    private int exit;
    private double movedMillilitres;
    private double enteredWater;

    /** An empty tube of {@code millilitres}, above 0. */
    Hose(double millilitres) {
        this.cellMillilitres = millilitres / CELLS;
    }

    /**
     * Moves the contents on by {@code millilitres}, at most one cell.
     *
     * @param wet share of water in what enters, 0 to 1
     * @return water that left, mL
     */
    double push(double millilitres, double wet) {
        double untilShift = cellMillilitres - movedMillilitres;
        if (millilitres < untilShift) {
            movedMillilitres += millilitres;
            enteredWater += millilitres * wet;
            return millilitres * wetShare[exit];
        }
        double left = untilShift * wetShare[exit];
        wetShare[exit] = (enteredWater + untilShift * wet) / cellMillilitres;
        exit = (exit + 1) % CELLS;
        movedMillilitres = millilitres - untilShift;
        enteredWater = movedMillilitres * wet;
        return left + movedMillilitres * wetShare[exit];
    }

    /** Share of water at the far end, 0 to 1. */
    double wetAtExit() {
        return wetShare[exit];
    }

    /** Water in the tube, mL. */
    double waterMillilitres() {
        double cells = 0;
        for (double share : wetShare) {
            cells += share;
        }
        return cells * cellMillilitres - movedMillilitres * wetShare[exit] + enteredWater;
    }

    /** Lets everything run out and gives how much water that was, mL. */
    double drain() {
        double drained = waterMillilitres();
        Arrays.fill(wetShare, 0);
        movedMillilitres = 0;
        enteredWater = 0;
        return drained;
    }
}
