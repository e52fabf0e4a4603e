package ouzel.simulator.plant;

import java.util.Set;

/**
 * The water sampler from intake to jar: suction tube, pump, delivery tube.
 *
 * <p>The pump turns at once, yet no water reaches the jar before both tubes are full: first the pump draws
 * air (low current, low ripple), then water (higher current, higher ripple), and one delivery tube later the jar fills.
 * An intake that comes out of the water sends a slug of air the same way.
 */
final class WaterLine {
    /** A dry diaphragm pump moves less air than it moves water. */
    private static final double AIR_SLIP = 0.85;
    /** Time in which the load follows what is in the pump's chambers. */
    private static final double CHAMBER_SECONDS = 0.08;

    /** What weed over the intake does to flow, load and ripple. */
    private static final double BLOCKED_FLOW = 0.04;

    private static final double BLOCKED_LOAD = 1.25;
    private static final double BLOCKED_RIPPLE = 1.7;
    /** Share of the flow lost at a leaking joint. */
    private static final double LEAK_SHARE = 0.35;
    /** A kinked tube swells: pressure gained for each mL pushed in. */
    private static final double KINK_PASCALS_PER_MILLILITRE = 25_000;
    /** Load at the stall pressure on top of the usual one, as a multiple of it. */
    private static final double STALL_LOAD = 3;
    /** Share that an airlock leaves of the flow. */
    private static final double AIRLOCK_FLOW = 0.02;
    /** How it breathes: share of the load, once in 1.3 s. */
    private static final double BREATH = 0.07;

    private static final double BREATH_RADIANS = 2 * Math.PI * Plant.STEP_SECONDS / 1.3;
    /** What is left in a step of the pressure behind a kink once it opens. */
    private static final double RELIEF = Math.exp(-Plant.STEP_SECONDS / 0.3);

    private static final double CHAMBER = 1 - Math.exp(-Plant.STEP_SECONDS / CHAMBER_SECONDS);

    private final PayloadProfile.Pump pump;
    private final PayloadProfile.WaterSampler figures;
    private final Set<Fault> faults;
    private final PumpMotor motor;
    private final Hose suction;
    private final Hose delivery;
    private final Jar jar;
    private double wetInPump;
    private double kinkPascals;
    private double drawnMillilitres;
    private double leakedMillilitres;
    private boolean airlocked;
    private long onSteps;

    WaterLine(PayloadProfile profile, Jar jar, Set<Fault> faults, Noise noise) {
        this.pump = profile.waterPump();
        this.figures = profile.water();
        this.faults = faults;
        this.motor = new PumpMotor(pump, noise);
        this.suction = new Hose(figures.suctionMillilitres());
        this.delivery = new Hose(figures.deliveryMillilitres());
        this.jar = jar;
    }

    /**
     * Runs for one step.
     *
     * @param volts at the pump's switch, 0 when off
     * @param intakeWet the intake is under water
     */
    void step(double volts, boolean intakeWet) {
        boolean open = faults.contains(Fault.WATER_PUMP_OPEN);
        boolean inletBlocked = faults.contains(Fault.WATER_INLET_BLOCKED);
        airlocked = faults.contains(Fault.WATER_AIRLOCK);
        onSteps += volts > 0 ? 1 : 0;
        motor.step(
                open ? 0 : volts, load(inletBlocked), ripple(inletBlocked), faults.contains(Fault.WATER_PUMP_JAMMED));
        double moved = moved(inletBlocked);
        if (faults.contains(Fault.WATER_OUTLET_BLOCKED)) {
            kinkPascals += moved * KINK_PASCALS_PER_MILLILITRE;
        } else {
            kinkPascals *= RELIEF;
            move(moved, intakeWet);
        }
        wetInPump += ((airlocked ? 0 : suction.wetAtExit()) - wetInPump) * CHAMBER;
    }

    private double load(boolean inletBlocked) {
        double load = pump.dryAmperes() + (pump.loadedAmperes() - pump.dryAmperes()) * wetInPump;
        double pressed = 1 + STALL_LOAD * Math.min(1, kinkPascals / pump.stallPascals());
        double breath = airlocked ? 1 + BREATH * Math.sin(onSteps * BREATH_RADIANS) : 1;
        return load * pressed * breath * (inletBlocked ? BLOCKED_LOAD : 1);
    }

    private double ripple(boolean inletBlocked) {
        double ripple = pump.dryRipple() + (pump.loadedRipple() - pump.dryRipple()) * wetInPump;
        return inletBlocked ? ripple * BLOCKED_RIPPLE : ripple;
    }

    private double moved(boolean inletBlocked) {
        double slip = AIR_SLIP + (1 - AIR_SLIP) * wetInPump;
        double back = (figures.liftPascals() * wetInPump + kinkPascals) / pump.stallPascals();
        double locked = airlocked ? AIRLOCK_FLOW : 1;
        double flow = locked * motor.freeMillilitres() * slip * Math.max(0, 1 - back);
        return inletBlocked ? flow * BLOCKED_FLOW : flow;
    }

    private void move(double millilitres, boolean intakeWet) {
        if (millilitres <= 0) {
            return;
        }
        drawnMillilitres += intakeWet ? millilitres : 0;
        double pumped = suction.push(millilitres, intakeWet ? 1 : 0);
        double arrived = delivery.push(millilitres, pumped / millilitres);
        double leaked = faults.contains(Fault.WATER_LINE_LEAK) ? arrived * LEAK_SHARE : 0;
        leakedMillilitres += leaked;
        jar.pour(arrived - leaked);
    }

    /** Empties both tubes, as when the sampler is made ready again. */
    void drain() {
        leakedMillilitres += suction.drain() + delivery.drain();
        wetInPump = 0;
        kinkPascals = 0;
    }

    /** True while the jar end of the line carries water. */
    boolean isPrimed() {
        return delivery.wetAtExit() > 0.5;
    }

    /** Water standing in the tubes, mL. */
    double standingMillilitres() {
        return suction.waterMillilitres() + delivery.waterMillilitres();
    }

    /** Water taken in since the start, mL. */
    double drawnMillilitres() {
        return drawnMillilitres;
    }

    /** Water lost from the line since the start, mL. */
    double leakedMillilitres() {
        return leakedMillilitres;
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
