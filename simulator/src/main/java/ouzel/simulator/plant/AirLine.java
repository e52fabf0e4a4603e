package ouzel.simulator.plant;

import java.util.Set;

/** The air sampler: a pump that blows ambient air into the bag, past the bag's pressure sensor. */
final class AirLine {
    /** Volume between pump and bag valve, mL. */
    private static final double TUBE_MILLILITRES = 14;
    /** Share of the tube's pressure that is still there after a step; the rest leaks back through the pump's flaps. */
    private static final double TUBE_KEPT = Math.exp(-Plant.STEP_SECONDS / 2.5);

    /** Load at the stall pressure on top of the usual one, as a multiple of it. */
    private static final double STALL_LOAD = 0.9;
    /** Load of a pump that blows into the open. */
    private static final double UNLOADED = 0.82;
    /** Load of a pump that drinks. */
    private static final double WATER_LOAD = 1.8;
    /** Pressure lost in the bag's fitting at full flow, Pa. */
    private static final double FITTING_PASCALS = 60;

    private final PayloadProfile.Pump pump;
    private final Set<Fault> faults;
    private final PumpMotor motor;
    private final Bag bag;
    private double tubePascals;
    private double sensedPascals;
    private double pumpedMillilitres;
    private long onSteps;

    AirLine(PayloadProfile profile, Bag bag, Set<Fault> faults, Noise noise) {
        this.pump = profile.airPump();
        this.faults = faults;
        this.motor = new PumpMotor(pump, noise);
        this.bag = bag;
    }

    /**
     * Runs for one step.
     *
     * @param volts at the pump's switch, 0 when off
     * @param inletWet water instead of air at the inlet
     * @param surroundings for ambient pressure and temperature
     */
    void step(double volts, boolean inletWet, Surroundings surroundings) {
        boolean open = faults.contains(Fault.AIR_PUMP_OPEN);
        onSteps += volts > 0 ? 1 : 0;
        double back = Math.min(1, sensedPascals / pump.stallPascals());
        boolean off = faults.contains(Fault.BAG_TUBE_OFF);
        double load = pump.loadedAmperes() * (off ? UNLOADED : 1 + STALL_LOAD * back) * (inletWet ? WATER_LOAD : 1);
        motor.step(open ? 0 : volts, load, off ? pump.dryRipple() : pump.loadedRipple(), false);
        double moved = inletWet ? 0 : motor.freeMillilitres() * (1 - back);
        deliver(moved, off, surroundings);
        bag.step(surroundings.pressurePascals(), surroundings.temperatureCelsius());
        sensedPascals = sensed(moved, off);
    }

    private void deliver(double moved, boolean off, Surroundings surroundings) {
        boolean closed = faults.contains(Fault.BAG_VALVE_CLOSED);
        tubePascals *= TUBE_KEPT;
        if (closed && !off) {
            tubePascals += moved / TUBE_MILLILITRES * surroundings.pressurePascals();
        } else if (!off) {
            pumpedMillilitres += moved;
            bag.blow(moved, surroundings.pressurePascals(), surroundings.temperatureCelsius());
        }
    }

    private double sensed(double moved, boolean off) {
        if (off) {
            return 0;
        }
        if (faults.contains(Fault.BAG_VALVE_CLOSED)) {
            return tubePascals;
        }
        double share = moved / (pump.freeMillilitresPerSecond() * Plant.STEP_SECONDS);
        return bag.pascals() + FITTING_PASCALS * share;
    }

    /** Makes the tube free of pressure, as when the bag is changed. */
    void relieve() {
        tubePascals = 0;
        sensedPascals = 0;
    }

    /** Pressure over ambient where the sensor sits, Pa. */
    double sensedPascals() {
        return sensedPascals;
    }

    /** Air blown into bags since the start, mL at the ambient conditions of each moment. */
    double pumpedMillilitres() {
        return pumpedMillilitres;
    }

    double amperes() {
        return motor.amperes();
    }

    double meanAmperes() {
        return motor.meanAmperes();
    }

    long onMillis() {
        return onSteps * Plant.STEP_MILLIS;
    }
}
