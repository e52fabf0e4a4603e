package ouzel.simulator.plant;

import java.util.Set;

/**
 * The payload's own lithium pack: open voltage by charge, a resistance that grows in the cold, and a slow part of the
 * sag that comes and goes over seconds.
 */
final class BatteryPack {
    /** Open voltage of a cell at every tenth of its charge, V; a usual shape, not any cell's data sheet. */
    private static final double[] OPEN_VOLTS = {3.30, 3.60, 3.69, 3.73, 3.77, 3.81, 3.86, 3.93, 4.00, 4.08, 4.18};

    /** Slow part of the sag over the quick part. */
    private static final double SLOW_SHARE = 0.5;

    private static final double SLOW_SECONDS = 9;
    private static final double SLOW = 1 - Math.exp(-Plant.STEP_SECONDS / SLOW_SECONDS);
    /** Resistance grows by this share for every degree below 20. */
    private static final double COLD_PER_KELVIN = 0.022;

    private static final double AMPERE_SECONDS_PER_MILLIAMPHOUR = 3.6;

    /** A worn pack's resistance over a sound one's. */
    private static final double WORN = 4;

    private final PayloadProfile.Pack figures;
    private final Set<Fault> faults;
    private double milliampHours;
    private double slowVolts;
    private double volts;
    private double amperes;

    BatteryPack(PayloadProfile.Pack figures, Set<Fault> faults) {
        this.figures = figures;
        this.faults = faults;
        this.milliampHours = figures.milliampHours() * figures.startCharge();
        this.volts = openVolts();
    }

    /** Gives {@code drawn} A for one step. */
    void step(double drawn, double celsius) {
        amperes = drawn;
        milliampHours = Math.max(0, milliampHours - drawn * Plant.STEP_SECONDS / AMPERE_SECONDS_PER_MILLIAMPHOUR);
        double cold = 1 + COLD_PER_KELVIN * Math.max(0, 20 - celsius);
        double ohms = figures.ohms() * cold * (faults.contains(Fault.PACK_WORN) ? WORN : 1);
        slowVolts += (drawn * ohms * SLOW_SHARE - slowVolts) * SLOW;
        volts = Math.max(0, openVolts() - drawn * ohms - slowVolts);
    }

    private double openVolts() {
        double place = charge() * (OPEN_VOLTS.length - 1);
        int left = Math.min((int) place, OPEN_VOLTS.length - 2);
        double cell = OPEN_VOLTS[left] + (place - left) * (OPEN_VOLTS[left + 1] - OPEN_VOLTS[left]);
        return milliampHours > 0 ? cell * figures.cells() : 0;
    }

    /** Charge left, 0 to 1. */
    double charge() {
        return milliampHours / figures.milliampHours();
    }

    double milliampHours() {
        return milliampHours;
    }

    double volts() {
        return volts;
    }

    double amperes() {
        return amperes;
    }
}
