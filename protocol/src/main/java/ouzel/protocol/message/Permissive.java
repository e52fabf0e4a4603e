package ouzel.protocol.message;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A condition that must hold before a sampler may be armed and at the instant it is triggered, as judged on board.
 *
 * <p>The wire code is also the bit in {@link Status#permissivesMet()} and {@link Arm#attested()}. Limits are given for
 * arming and, where they differ, for the trip that takes an armed sampler back to safe; the gap is the hysteresis.
 */
public enum Permissive {
    /** The arming plug in series with every actuator is in. */
    PLUG_FITTED(0, "arming plug fitted", Sampler.values()),
    /** Resting battery voltage, mV: arm at or above, trip below. */
    BATTERY(1, "battery", Sampler.values()),
    /** The start-up test of memory, sensors and outputs passed. */
    SELF_TEST(2, "self-test passed", Sampler.values()),
    /** No other sampler is armed, drawing or stroking. */
    ALONE(3, "no other sampler active", Sampler.values()),
    /** At least two of three float wet sensors are wet. */
    AFLOAT(4, "afloat", Sampler.WATER),
    /** The water intake is under the surface. */
    INTAKE_WET(5, "intake under water", Sampler.WATER),
    /** Tilt for the water draw, 0.1 degree. */
    LEVEL_WATER(6, "level", Sampler.WATER),
    /** Acceleration about the mean, mg, for the water draw. */
    QUIET(7, "water quiet", Sampler.WATER),
    /** The jar's level switch is open. */
    JAR_EMPTY(8, "jar not full", Sampler.WATER),
    /** The electronics bay is dry. */
    BAY_DRY(9, "electronics bay dry", Sampler.values()),
    /** The air inlet is dry. */
    INLET_DRY(10, "air inlet dry", Sampler.AIR),
    /** Bag pressure over ambient, Pa. */
    BAG_SLACK(11, "bag slack", Sampler.AIR),
    /** Time since the soil probe last vented its gas, s. */
    NO_VENTED_GAS(12, "no gas vented nearby", Sampler.AIR),
    /** All legs stand on the ground. */
    ON_GROUND(13, "standing on the ground", Sampler.SOIL),
    /** No float wet sensor is wet. */
    FLOATS_DRY(14, "not on water", Sampler.SOIL),
    /** Tilt for the stroke, 0.1 degree. */
    LEVEL_SOIL(15, "level", Sampler.SOIL),
    /** Acceleration about the mean, mg, for the stroke. */
    STILL(16, "standing still", Sampler.SOIL),
    /** Vibration in the rotor band, mg. */
    ROTORS_STOPPED(17, "rotors stopped", Sampler.SOIL),
    /** The probe rests on its home switch. */
    PROBE_HOME(18, "probe home", Sampler.SOIL),
    /** Regulated gas pressure, kPa, inside its window. */
    GAS_PRESSURE(19, "gas pressure", Sampler.SOIL),
    /** Strokes left by the on-board count. */
    STROKES_LEFT(20, "strokes left", Sampler.SOIL);

    private static final List<Permissive> ALL = List.of(values());

    private final int code;
    private final String words;
    private final Set<Sampler> samplers;

    Permissive(int code, String words, Sampler... samplers) {
        this.code = code;
        this.words = words;
        this.samplers = EnumSet.copyOf(Arrays.asList(samplers));
    }

    /** Wire code and bit number, 0 to 31. */
    public int code() {
        return code;
    }

    /** The condition in words, as a statement that should be true. */
    public String words() {
        return words;
    }

    /** True if {@code sampler} needs this condition. */
    public boolean concerns(Sampler sampler) {
        return samplers.contains(sampler);
    }

    /** This permissive's bit in a 32-bit set. */
    public int bit() {
        return 1 << code;
    }

    /** True if this permissive's bit is set in {@code bits}. */
    public boolean isIn(int bits) {
        return (bits & bit()) != 0;
    }

    /** The permissives {@code sampler} needs, in wire order. */
    public static List<Permissive> of(Sampler sampler) {
        return ALL.stream().filter(permissive -> permissive.concerns(sampler)).toList();
    }

    /** All bits of the permissives {@code sampler} needs. */
    public static int bitsOf(Sampler sampler) {
        return of(sampler).stream().mapToInt(Permissive::bit).reduce(0, (a, b) -> a | b);
    }
}
