package ouzel.simulator.plant;

/**
 * A brushed motor with its pump's load.
 *
 * <p>The armature's own time constant, about 1 ms, is shorter than a step and left out; the rotor's is kept, so that
 * switching on shows an inrush of volts / ohms that dies away as the motor gains speed. The load is partly constant and
 * partly grows with speed; back pressure adds to it. The current pulses once a turn, as a diaphragm pump's does.
 */
final class PumpMotor {
    private static final double STEP_SECONDS = Plant.STEP_SECONDS;
    /** Share of the load that does not depend on speed. */
    private static final double CONSTANT_SHARE = 0.6;

    /** Time constant of the run-down. */
    private static final double COASTING_SECONDS = 0.06;

    private static final double TURN = 2 * Math.PI;
    /** Relative drift of the flow with the seat of the flaps, standard deviation. */
    private static final double WANDER = 0.01;
    /** Time over which it wanders. */
    private static final double WANDER_SECONDS = 1.5;

    private final PayloadProfile.Pump figures;
    private final Noise noise;
    private final double voltSeconds;
    private final double nominalSpeed;
    private final double gainOfSpeed;
    private final double lossOfSpeed;
    private final double wanderKept = Math.exp(-STEP_SECONDS / WANDER_SECONDS);
    private final double wanderAdded = WANDER * Math.sqrt(1 - wanderKept * wanderKept);
    private double radiansPerSecond;
    private double angle;
    private double wander;
    private double amperes;
    private double meanAmperes;

    PumpMotor(PayloadProfile.Pump figures, Noise noise) {
        this.figures = figures;
        this.noise = noise;
        this.nominalSpeed = figures.loadedRpm() / 60 * TURN;
        this.voltSeconds = (figures.nominalVolts() - figures.ohms() * figures.loadedAmperes()) / nominalSpeed;
        this.gainOfSpeed = 1 - Math.exp(-STEP_SECONDS / figures.spinUpSeconds());
        this.lossOfSpeed = Math.exp(-STEP_SECONDS / COASTING_SECONDS);
        this.angle = noise.uniform(0, TURN);
    }

    /**
     * Turns for one step.
     *
     * @param volts at the terminals; 0 when switched off or a wire is open
     * @param load torque wanted, as the current in A that holds it at nominal speed
     * @param ripple half height of the pulses over the mean current
     * @param jammed the shaft is held
     */
    void step(double volts, double load, double ripple, boolean jammed) {
        wander = wander * wanderKept + wanderAdded * noise.bell();
        if (volts <= 0) {
            radiansPerSecond = jammed ? 0 : radiansPerSecond * lossOfSpeed;
            amperes = 0;
            meanAmperes = 0;
            return;
        }
        double atStart = Math.max(0, (volts - voltSeconds * radiansPerSecond) / figures.ohms());
        double before = radiansPerSecond;
        radiansPerSecond = jammed ? 0 : before + (settledSpeed(volts, load) - before) * gainOfSpeed;
        double middle = (before + radiansPerSecond) / 2;
        angle += middle * STEP_SECONDS;
        if (angle > TURN) {
            angle -= TURN * (int) (angle / TURN);
        }
        meanAmperes = Math.max(0, (volts - voltSeconds * middle) / figures.ohms());
        amperes = jammed ? atStart : atStart * (1 + ripple * Math.sin(angle));
    }

    private double settledSpeed(double volts, double load) {
        double constant = CONSTANT_SHARE * load;
        double perSpeed = (1 - CONSTANT_SHARE) * load / nominalSpeed;
        double speed = (volts - figures.ohms() * constant) / (voltSeconds + figures.ohms() * perSpeed);
        return Math.max(0, speed);
    }

    /** Volume moved in this step without back pressure, mL: one stroke's volume times the turns, as the flaps allow. */
    double freeMillilitres() {
        return figures.freeMillilitresPerSecond() * radiansPerSecond / nominalSpeed * (1 + wander) * STEP_SECONDS;
    }

    /** Current at the instant of sampling, A. */
    double amperes() {
        return amperes;
    }

    /** Mean current over the step, A. */
    double meanAmperes() {
        return meanAmperes;
    }
}
