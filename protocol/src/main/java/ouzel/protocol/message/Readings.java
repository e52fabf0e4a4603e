package ouzel.protocol.message;

/**
 * The sensors on board at one instant, in wire units. A sensor that is not fitted, or whose value makes no sense, reads
 * {@link #ABSENT}.
 *
 * @param batteryMillivolts pack voltage, 0 to 65 534 mV
 * @param batteryMilliamps pack current, 0 to 65 534 mA
 * @param tiltTenths tilt from the vertical, 0 to 1 800 tenths of a degree
 * @param motionMilligees acceleration about its mean over the last second, mg
 * @param vibrationMilligees vibration in the rotor band, mg
 * @param temperatureTenths ambient temperature, -500 to 1 000 tenths of a degree Celsius
 * @param pressureTensPascals ambient pressure in units of 10 Pa, 3 000 to 11 000
 * @param bagPascals bag pressure over ambient, -2 000 to 20 000 Pa
 * @param gasKilopascals regulated gas pressure over ambient, 0 to 2 000 kPa
 * @param sinceVentSeconds time since the soil probe last vented gas, 0 to 65 534 s; {@link #ABSENT} if it never did
 * @param strokesLeft strokes left by the on-board count, 0 to 254
 * @param switches bits of {@link Switch}
 */
public record Readings(
        int batteryMillivolts,
        int batteryMilliamps,
        int tiltTenths,
        int motionMilligees,
        int vibrationMilligees,
        int temperatureTenths,
        int pressureTensPascals,
        int bagPascals,
        int gasKilopascals,
        int sinceVentSeconds,
        int strokesLeft,
        int switches) {

    /** Stands for a value that is not there. */
    public static final int ABSENT = Integer.MIN_VALUE;

    /** A sensor with two positions. */
    public enum Switch {
        /** The arming plug is in. */
        PLUG(0),
        /** Float wet sensor A is wet. */
        FLOAT_A(1),
        /** Float wet sensor B is wet. */
        FLOAT_B(2),
        /** Float wet sensor C is wet. */
        FLOAT_C(3),
        /** The water intake is wet. */
        INTAKE(4),
        /** The air inlet is wet. */
        INLET(5),
        /** The jar's level switch is closed: full. */
        JAR_FULL(6),
        /** Water stands in the electronics bay. */
        BAY_WET(7),
        /** All legs are pressed by the ground. */
        LEGS(8),
        /** The probe is on its home switch. */
        PROBE_HOME(9),
        /** The start-up test passed. */
        SELF_TEST(10);

        private final int code;

        Switch(int code) {
            this.code = code;
        }

        /** Bit number in {@link Readings#switches()}. */
        public int code() {
            return code;
        }

        /** This switch's bit. */
        public int bit() {
            return 1 << code;
        }
    }

    /** True if {@code which} is closed, wet or pressed. */
    public boolean is(Switch which) {
        return (switches & which.bit()) != 0;
    }

    /** How many of the three float wet sensors are wet. */
    public int floatsWet() {
        return (is(Switch.FLOAT_A) ? 1 : 0) + (is(Switch.FLOAT_B) ? 1 : 0) + (is(Switch.FLOAT_C) ? 1 : 0);
    }
}
