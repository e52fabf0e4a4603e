package ouzel.simulator.controller;

import java.util.List;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Readings.Switch;
import ouzel.protocol.message.Sampler;
import ouzel.simulator.plant.Sensed;

/**
 * What the sensors say, with everything taken out that must not be believed: sensors that are not fitted, values out of
 * range, an inertial sensor whose noise has died, and readings that are too old.
 */
final class Instruments {
    private static final int GREATEST_MILLIVOLTS = 65_534;
    private static final int GREATEST_TILT_TENTHS = 1_800;
    private static final int GREATEST_MILLIGEES = 65_534;
    private static final int LEAST_BAG_PASCALS = -2_000;
    private static final int GREATEST_BAG_PASCALS = 20_000;
    private static final int GREATEST_KILOPASCALS = 2_000;

    private static final Sensed NOTHING = new Sensed(
            Readings.ABSENT,
            Readings.ABSENT,
            Readings.ABSENT,
            Readings.ABSENT,
            Readings.ABSENT,
            Readings.ABSENT,
            Readings.ABSENT,
            Readings.ABSENT,
            Readings.ABSENT,
            0,
            0,
            0,
            List.of());

    private final int capabilities;
    private final int unmeasured;
    private final int staleMillis;
    private final Stillness tilt;
    private final Stillness motion;
    private final Stillness vibration;
    private Sensed sensed = NOTHING;
    private OwnAccount account = new OwnAccount(false, true, Readings.ABSENT, 0);
    private boolean tiltFrozen;
    private boolean motionFrozen;
    private boolean vibrationFrozen;
    private boolean everTaken;
    private long takenAtMillis;

    /**
     * What the controller knows without a sensor.
     *
     * @param selfTestPassed the start-up test passed
     * @param alone at most one sampler is armed or acting
     * @param sinceVentSeconds time since gas was vented, s; {@link Readings#ABSENT} if it never was
     * @param strokesLeft strokes left by the count
     */
    record OwnAccount(boolean selfTestPassed, boolean alone, int sinceVentSeconds, int strokesLeft) {}

    Instruments(int capabilities, Limits limits) {
        this.capabilities = capabilities;
        this.unmeasured = Capability.unmeasured(capabilities);
        this.staleMillis = limits.staleMillis();
        this.tilt = new Stillness(limits.frozenMillis());
        this.motion = new Stillness(limits.frozenMillis());
        this.vibration = new Stillness(limits.frozenMillis());
    }

    void take(Sensed taken, OwnAccount own, long nowMillis) {
        sensed = taken;
        account = own;
        everTaken = true;
        takenAtMillis = nowMillis;
        tiltFrozen = tilt.isFrozen(taken.tiltTenths(), nowMillis);
        motionFrozen = motion.isFrozen(taken.motionMilligees(), nowMillis);
        vibrationFrozen = vibration.isFrozen(taken.vibrationMilligees(), nowMillis);
    }

    /** True if there was no reading yet or the last one is older than a permissive may rest on. */
    boolean isStale(long nowMillis) {
        return !everTaken || nowMillis - takenAtMillis > staleMillis;
    }

    boolean has(Capability capability) {
        return (capabilities & capability.bit()) != 0;
    }

    /** True if this payload has the sensor for {@code permissive}. */
    boolean measures(Permissive permissive) {
        return !permissive.isIn(unmeasured);
    }

    /** The value a permissive is judged by, in its unit, 1 or 0 for two positions; {@link Readings#ABSENT} if none. */
    int value(Permissive permissive) {
        if (!measures(permissive)) {
            return Readings.ABSENT;
        }
        return switch (permissive) {
            case PLUG_FITTED -> closed(Switch.PLUG);
            case BATTERY -> batteryMillivolts();
            case SELF_TEST -> account.selfTestPassed() ? 1 : 0;
            case ALONE -> account.alone() ? 1 : 0;
            case AFLOAT, FLOATS_DRY -> floatsWet();
            case INTAKE_WET -> closed(Switch.INTAKE);
            case LEVEL_WATER, LEVEL_SOIL -> tiltTenths();
            case QUIET, STILL -> motionMilligees();
            case JAR_EMPTY -> 1 - closed(Switch.JAR_FULL);
            case BAY_DRY -> 1 - closed(Switch.BAY_WET);
            case INLET_DRY -> 1 - closed(Switch.INLET);
            case BAG_SLACK -> bagPascals();
            case NO_VENTED_GAS -> sinceVentOrForever();
            case ON_GROUND -> closed(Switch.LEGS);
            case ROTORS_STOPPED -> vibrationMilligees();
            case PROBE_HOME -> closed(Switch.PROBE_HOME);
            case GAS_PRESSURE -> gasKilopascals();
            case STROKES_LEFT -> account.strokesLeft();
        };
    }

    int pumpMilliamps(Sampler sampler) {
        return sampler == Sampler.WATER ? sensed.waterPumpMilliamps() : sensed.airPumpMilliamps();
    }

    List<Integer> valveMilliamps() {
        return sensed.valveMilliamps();
    }

    boolean isClosed(Switch which) {
        return (sensed.switches() & which.bit()) != 0;
    }

    int batteryMillivolts() {
        return plausible(sensed.batteryMillivolts(), 0, GREATEST_MILLIVOLTS);
    }

    /** Bag pressure over ambient, Pa; {@link Readings#ABSENT} if not fitted or out of range. */
    int bagPascals() {
        return fitted(Capability.BAG_PRESSURE, sensed.bagPascals(), LEAST_BAG_PASCALS, GREATEST_BAG_PASCALS);
    }

    /** The readings as they go into the status. */
    Readings readings() {
        return new Readings(
                batteryMillivolts(),
                plausible(sensed.batteryMilliamps(), 0, GREATEST_MILLIVOLTS),
                tiltTenths(),
                motionMilligees(),
                vibrationMilligees(),
                fitted(Capability.AMBIENT, sensed.temperatureTenths(), -500, 1_000),
                fitted(Capability.AMBIENT, sensed.pressureTensPascals(), 3_000, 11_000),
                bagPascals(),
                gasKilopascals(),
                account.sinceVentSeconds(),
                account.strokesLeft(),
                sensed.switches() | (account.selfTestPassed() ? Switch.SELF_TEST.bit() : 0));
    }

    private int closed(Switch which) {
        return isClosed(which) ? 1 : 0;
    }

    private int floatsWet() {
        return closed(Switch.FLOAT_A) + closed(Switch.FLOAT_B) + closed(Switch.FLOAT_C);
    }

    private int tiltTenths() {
        return tiltFrozen ? Readings.ABSENT : fitted(Capability.TILT, sensed.tiltTenths(), 0, GREATEST_TILT_TENTHS);
    }

    private int motionMilligees() {
        return motionFrozen
                ? Readings.ABSENT
                : fitted(Capability.MOTION, sensed.motionMilligees(), 0, GREATEST_MILLIGEES);
    }

    private int vibrationMilligees() {
        return vibrationFrozen
                ? Readings.ABSENT
                : fitted(Capability.MOTION, sensed.vibrationMilligees(), 0, GREATEST_MILLIGEES);
    }

    private int gasKilopascals() {
        return fitted(Capability.GAS_PRESSURE, sensed.gasKilopascals(), 0, GREATEST_KILOPASCALS);
    }

    private int sinceVentOrForever() {
        return account.sinceVentSeconds() == Readings.ABSENT ? Integer.MAX_VALUE : account.sinceVentSeconds();
    }

    private int fitted(Capability capability, int raw, int least, int greatest) {
        return has(capability) ? plausible(raw, least, greatest) : Readings.ABSENT;
    }

    private static int plausible(int raw, int least, int greatest) {
        return raw >= least && raw <= greatest ? raw : Readings.ABSENT;
    }
}
