package ouzel.protocol.message;

import java.util.EnumSet;
import java.util.Set;

/** Something a payload may or may not have; a missing sensor's permissive must be attested by a person. */
public enum Capability {
    /** A water sampler is fitted. */
    WATER_SAMPLER(0),
    /** An air sampler is fitted. */
    AIR_SAMPLER(1),
    /** A soil probe is fitted. */
    SOIL_SAMPLER(2),
    /** Reports tilt: {@link Permissive#LEVEL_WATER} and {@link Permissive#LEVEL_SOIL} are measured. */
    TILT(3, Permissive.LEVEL_WATER, Permissive.LEVEL_SOIL),
    /** Reports motion and vibration. */
    MOTION(4, Permissive.QUIET, Permissive.STILL, Permissive.ROTORS_STOPPED),
    /** Has wet sensors on its floats. */
    FLOAT_WET(5, Permissive.AFLOAT, Permissive.FLOATS_DRY),
    /** Has wet sensors at the water intake and the air inlet. */
    INTAKE_WET(6, Permissive.INTAKE_WET, Permissive.INLET_DRY),
    /** Has a level switch in the jar. */
    JAR_LEVEL(7, Permissive.JAR_EMPTY),
    /** Measures bag pressure. */
    BAG_PRESSURE(8, Permissive.BAG_SLACK),
    /** Has ground contact switches on its legs. */
    GROUND_CONTACT(9, Permissive.ON_GROUND),
    /** Measures regulated gas pressure. */
    GAS_PRESSURE(10, Permissive.GAS_PRESSURE),
    /** Has a leak detector in the electronics bay. */
    BAY_LEAK(11, Permissive.BAY_DRY),
    /** Captures the valve coil's current at 2 kHz. */
    VALVE_WAVEFORM(12),
    /** Measures ambient pressure and temperature. */
    AMBIENT(13);

    private final int code;
    private final Set<Permissive> measures;

    Capability(int code, Permissive... measures) {
        this.code = code;
        this.measures = EnumSet.noneOf(Permissive.class);
        this.measures.addAll(Set.of(measures));
    }

    /** Bit number in {@link Identity#capabilities()}. */
    public int code() {
        return code;
    }

    /** This capability's bit. */
    public int bit() {
        return 1 << code;
    }

    /** Bits of all capabilities. */
    public static int all() {
        int bits = 0;
        for (Capability capability : values()) {
            bits |= capability.bit();
        }
        return bits;
    }

    /** Bits of the permissives that a payload with {@code capabilities} cannot measure and a person must attest. */
    public static int unmeasured(int capabilities) {
        int bits = 0;
        for (Capability capability : values()) {
            if ((capabilities & capability.bit()) == 0) {
                for (Permissive permissive : capability.measures) {
                    bits |= permissive.bit();
                }
            }
        }
        return bits;
    }
}
