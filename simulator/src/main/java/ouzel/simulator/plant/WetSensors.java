package ouzel.simulator.plant;

import java.util.Set;
import ouzel.protocol.message.Readings.Switch;

/** Contacts that see water, ground and the arming plug; water films make the wet ones slow to dry. */
final class WetSensors {
    private static final int FLOATS = 3;
    private static final int INTAKE = 3;
    private static final int INLET = 4;
    private static final int LEGS = 5;
    /** How long each contact must be wet or pressed before it says so, steps. */
    private static final int[] STEPS_TO_CLOSE = {15, 15, 15, 8, 2, 4};
    /** How long it must be dry or free, steps. */
    private static final int[] STEPS_TO_OPEN = {90, 90, 90, 40, 60, 1};

    private static final Switch[] SWITCHES = {
        Switch.FLOAT_A, Switch.FLOAT_B, Switch.FLOAT_C, Switch.INTAKE, Switch.INLET, Switch.LEGS
    };
    /** Tilt at which one float leaves the water. */
    private static final double ONE_FLOAT_DEGREES = 28;
    /** Tilt at which two do, and the intake with them. */
    private static final double TWO_FLOATS_DEGREES = 38;
    /** Tilt at which the air inlet dips in. */
    private static final double INLET_DEGREES = 45;
    /** Tilt at which a leg lifts. */
    private static final double LEG_DEGREES = 20;
    /** Depth of the intake below the still surface. */
    private static final double INTAKE_MILLIMETRES = 150;

    private final Set<Fault> faults;
    private final int[] pending = new int[SWITCHES.length];
    private int closed;
    private boolean intakeUnder;
    private boolean inletUnder;

    WetSensors(Set<Fault> faults) {
        this.faults = faults;
    }

    /** Looks around for one step; {@code tilt} in degrees, {@code heave} in mm over the mean surface. */
    void step(Surroundings.Place place, double tilt, double heave) {
        boolean afloat = place == Surroundings.Place.AFLOAT;
        intakeUnder = afloat && tilt < TWO_FLOATS_DEGREES && INTAKE_MILLIMETRES + heave > 0;
        inletUnder = afloat && tilt > INLET_DEGREES;
        set(0, afloat && tilt < ONE_FLOAT_DEGREES);
        set(1, afloat && tilt < TWO_FLOATS_DEGREES);
        set(FLOATS - 1, afloat);
        set(INTAKE, intakeUnder);
        set(INLET, inletUnder);
        set(LEGS, place == Surroundings.Place.ON_GROUND && tilt < LEG_DEGREES);
    }

    private void set(int index, boolean touched) {
        int bit = SWITCHES[index].bit();
        boolean says = (closed & bit) != 0;
        if (says == touched) {
            pending[index] = 0;
        } else if (++pending[index] >= (touched ? STEPS_TO_CLOSE : STEPS_TO_OPEN)[index]) {
            closed ^= bit;
            pending[index] = 0;
        }
    }

    /** Closed contacts as bits of {@link Switch}, with the plug and the bay's sensor. */
    int bits() {
        int plug = faults.contains(Fault.PLUG_OUT) ? 0 : Switch.PLUG.bit();
        int bay = faults.contains(Fault.BAY_WET) ? Switch.BAY_WET.bit() : 0;
        return closed | plug | bay;
    }

    /** True if the water intake really is under water. */
    boolean isIntakeUnder() {
        return intakeUnder;
    }

    /** True if the air inlet really is under water. */
    boolean isInletUnder() {
        return inletUnder;
    }
}
