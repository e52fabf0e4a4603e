package ouzel.simulator.physics;

/**
 * Volumes of an ideal gas carried over between actual and named reference conditions.
 *
 * <p>{@code V_ref = V (p / p_ref) (T_ref / T)}. A volume of gas says nothing unless its temperature and pressure are
 * named with it, and the standards do not agree on them. Range: 1 to 1 000 kPa, 200 to 400 K.
 */
public final class GasVolume {
    /** Kelvin at zero degrees Celsius. */
    public static final double ZERO_CELSIUS_KELVIN = 273.15;

    private static final double MOLAR_GAS_CONSTANT = 8.314462618;

    private GasVolume() {}

    /** A pair of temperature and pressure that has a name. */
    public enum Reference {
        /** 25 °C and 101.325 kPa, ambient air (40 CFR 50.3). */
        AMBIENT_AIR_25C("25 °C, 101.325 kPa", 298.15, 101_325),
        /** 20 °C and 101.325 kPa, source testing (40 CFR 60.2, which rounds to 293 K and 101.3 kPa). */
        SOURCE_TEST_20C("20 °C, 101.325 kPa", 293.15, 101_325),
        /** 15 °C and 101.325 kPa, natural gas (ISO 13443). */
        NATURAL_GAS_15C("15 °C, 101.325 kPa", 288.15, 101_325),
        /** 0 °C and 101.325 kPa, stack gas (DIN 1343). */
        NORMAL_0C("0 °C, 101.325 kPa", 273.15, 101_325),
        /** 0 °C and 100 kPa, chemistry (IUPAC). */
        CHEMISTRY_0C("0 °C, 100 kPa", 273.15, 100_000);

        private final String words;
        private final double kelvin;
        private final double pascals;

        Reference(String words, double kelvin, double pascals) {
            this.words = words;
            this.kelvin = kelvin;
            this.pascals = pascals;
        }

        /** The conditions as they are written beside a volume. */
        public String words() {
            return words;
        }

        /** Temperature, K. */
        public double kelvin() {
            return kelvin;
        }

        /** Absolute pressure, Pa. */
        public double pascals() {
            return pascals;
        }

        /** Volume of one mole of an ideal gas, L/mol. */
        public double molarLitres() {
            return 1_000 * MOLAR_GAS_CONSTANT * kelvin / pascals;
        }
    }

    /**
     * The volume that a gas takes at {@code reference}, in the unit of {@code volume}.
     *
     * @param volume actual volume, not negative, any unit
     * @param celsius its temperature, -70 to 120 °C
     * @param pascals its absolute pressure, 1 000 to 1 000 000 Pa
     * @param reference the conditions wanted
     */
    public static double at(Reference reference, double volume, double celsius, double pascals) {
        Checks.notNegative("volume", volume);
        Checks.within("celsius", celsius, -70, 120);
        Checks.within("pascals", pascals, 1_000, 1_000_000);
        return volume * (pascals / reference.pascals) * (reference.kelvin / (celsius + ZERO_CELSIUS_KELVIN));
    }

    /** The reverse of {@link #at}: what a volume at {@code reference} takes at the actual conditions. */
    public static double from(Reference reference, double volume, double celsius, double pascals) {
        return Checks.notNegative("volume", volume) / at(reference, 1, celsius, pascals);
    }
}
