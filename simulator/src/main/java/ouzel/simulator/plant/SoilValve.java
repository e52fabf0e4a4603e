package ouzel.simulator.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The solenoid valve that lets gas behind the probe's piston, with the shape of its coil current.
 *
 * <p>Current rises with L/R; once its pull passes the spring the plunger moves, and the inductance that grows with the
 * plunger's travel takes current away: a dip at seating. Seated, the inductance is larger and the rest of the rise
 * slower. A plunger that does not move shows no dip. The plunger's place runs from 0 (rest) to 1 (seated):
 *
 * <pre>
 *   V = R i + L(x) di/dt + i L' dx/dt,   m x'' = i^2 L' / 2 - spring
 * </pre>
 */
final class SoilValve {
    /** Samples of the coil current in one step: 2 000 a second. */
    static final int SAMPLES_PER_STEP = 20;

    /** Parts of a sample, each 0.1 ms: a twentieth of the shortest time constant. */
    private static final int SUBSTEPS = 5;

    private static final double SUBSTEP_SECONDS = Plant.STEP_SECONDS / (SAMPLES_PER_STEP * SUBSTEPS);
    private static final double COPPER_PER_KELVIN = 0.00393;
    /** Share of the coil's resistance left between shorted turns. */
    private static final double SHORTED = 0.12;
    /** Pull that a sluggish plunger needs to start, over a healthy one's. */
    private static final double SLUGGISH_START = 1.2;
    /** Its drag: at one travel in this time it takes the whole of the spring's pull, s. */
    private static final double SLUGGISH_DRAG_SECONDS = 0.004;

    private final PayloadProfile.Valve figures;
    private final Set<Fault> faults;
    private final SensorConverter converter;
    private final double slope;
    private final double springJoules;
    private final double mass;
    private double amperes;
    private double place;
    private double speed;
    private int openings;
    private int energisedSteps;

    SoilValve(PayloadProfile.Valve figures, Set<Fault> faults, Noise noise) {
        this.figures = figures;
        this.faults = faults;
        this.converter = SensorConverter.analogue(0, 1_000, noise.uniform(-3, 3), 1.2, noise.split("coil"));
        this.slope = figures.seatedHenries() - figures.restHenries();
        this.springJoules = pull(figures.pullInAmperes());
        // From rest the net pull grows to about two fifths of the spring's by the time the plunger seats.
        double seconds = figures.travelMillis() * 1e-3;
        this.mass = 0.4 * springJoules * seconds * seconds / 2;
    }

    private double pull(double current) {
        return current * current * slope / 2;
    }

    /** Lets the current rise for one step under {@code volts} and gives its samples, mA. */
    List<Integer> energise(double volts, double celsius) {
        energisedSteps++;
        double ohms = figures.ohms() * (1 + COPPER_PER_KELVIN * (celsius - 20));
        if (faults.contains(Fault.COIL_SHORTED)) {
            ohms *= SHORTED;
        }
        double applied = faults.contains(Fault.COIL_OPEN) ? 0 : volts;
        List<Integer> samples = new ArrayList<>(SAMPLES_PER_STEP);
        for (int sample = 0; sample < SAMPLES_PER_STEP; sample++) {
            samples.add(converter.read(amperes * 1_000));
            for (int substep = 0; substep < SUBSTEPS; substep++) {
                advance(applied, ohms);
            }
        }
        return samples;
    }

    private void advance(double volts, double ohms) {
        double henries = figures.restHenries() + slope * place;
        double motional = amperes * slope * speed;
        amperes = Math.max(0, amperes + (volts - ohms * amperes - motional) / henries * SUBSTEP_SECONDS);
        boolean held = faults.contains(Fault.VALVE_STUCK) || faults.contains(Fault.COIL_SHORTED);
        if (place < 1 && !held) {
            movePlunger();
        }
    }

    private void movePlunger() {
        boolean sluggish = faults.contains(Fault.VALVE_SLUGGISH);
        double spring = springJoules * (sluggish ? SLUGGISH_START : 1);
        double drag = sluggish ? springJoules * SLUGGISH_DRAG_SECONDS * speed : 0;
        speed = Math.max(0, speed + (pull(amperes) - spring - drag) / mass * SUBSTEP_SECONDS);
        place += speed * SUBSTEP_SECONDS;
        if (place >= 1) {
            place = 1;
            speed = 0;
            openings++;
        }
    }

    /** Lets the current die and the plunger fall back for one step: both take less than a step. */
    void rest() {
        amperes = 0;
        if (!faults.contains(Fault.VALVE_STUCK)) {
            place = 0;
            speed = 0;
        }
    }

    /** True while the plunger is far enough for gas to pass. */
    boolean isOpen() {
        return place > 0.5;
    }

    double amperes() {
        return amperes;
    }

    /** Times the plunger reached its seat. */
    int openings() {
        return openings;
    }

    long energisedMillis() {
        return (long) energisedSteps * Plant.STEP_MILLIS;
    }
}
