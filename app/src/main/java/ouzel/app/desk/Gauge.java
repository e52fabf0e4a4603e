package ouzel.app.desk;

import java.util.Locale;
import java.util.Optional;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Readings;

/**
 * The console's own scale for a permissive that is a number: its unit and the limits the console holds it against.
 *
 * <p>Limits are in wire units. The arming limits hold before arming, the wider trip limits while the sampler is armed
 * or acts; the gap between them is the hysteresis. Values are common practice for small craft, no source.
 *
 * @param unit unit on the screen, with the space before it if it takes one
 * @param scale wire units in one unit on the screen
 * @param decimals decimals on the screen
 * @param armLeast least value to arm at, {@link Integer#MIN_VALUE} if there is none
 * @param armMost greatest value to arm at, {@link Integer#MAX_VALUE} if there is none
 * @param tripLeast least value to stay armed at
 * @param tripMost greatest value to stay armed at
 */
record Gauge(String unit, int scale, int decimals, int armLeast, int armMost, int tripLeast, int tripMost) {
    private static final int NO_LEAST = Integer.MIN_VALUE;
    private static final int NO_MOST = Integer.MAX_VALUE;

    private static Gauge atMost(String unit, int scale, int decimals, int arm, int trip) {
        return new Gauge(unit, scale, decimals, NO_LEAST, arm, NO_LEAST, trip);
    }

    private static Gauge atLeast(String unit, int scale, int decimals, int arm, int trip) {
        return new Gauge(unit, scale, decimals, arm, NO_MOST, trip, NO_MOST);
    }

    /** The scale of {@code permissive}; empty if it is a switch. */
    static Optional<Gauge> of(Permissive permissive) {
        return switch (permissive) {
            case BATTERY -> Optional.of(atLeast(" V", 1_000, 1, 10_800, 9_600));
            case LEVEL_WATER -> Optional.of(atMost("°", 10, 1, 150, 250));
            case LEVEL_SOIL -> Optional.of(atMost("°", 10, 1, 80, 120));
            case QUIET -> Optional.of(atMost(" mg", 1, 0, 150, 350));
            case STILL -> Optional.of(atMost(" mg", 1, 0, 50, 80));
            case ROTORS_STOPPED -> Optional.of(atMost(" mg", 1, 0, 60, 90));
            case BAG_SLACK -> Optional.of(atMost(" Pa", 1, 0, 200, 2_000));
            case NO_VENTED_GAS -> Optional.of(atLeast(" s", 1, 0, 600, 600));
            case GAS_PRESSURE -> Optional.of(new Gauge(" kPa", 1, 0, 350, 550, 280, 620));
            case STROKES_LEFT -> Optional.of(atLeast("", 1, 0, 1, 0));
            case PLUG_FITTED,
                    SELF_TEST,
                    ALONE,
                    AFLOAT,
                    INTAKE_WET,
                    JAR_EMPTY,
                    BAY_DRY,
                    INLET_DRY,
                    ON_GROUND,
                    FLOATS_DRY,
                    PROBE_HOME -> Optional.empty();
        };
    }

    /** The value that {@code readings} give for a gauged permissive, in wire units. */
    static int value(Permissive permissive, Readings readings) {
        return switch (permissive) {
            case BATTERY -> readings.batteryMillivolts();
            case LEVEL_WATER, LEVEL_SOIL -> readings.tiltTenths();
            case QUIET, STILL -> readings.motionMilligees();
            case ROTORS_STOPPED -> readings.vibrationMilligees();
            case BAG_SLACK -> readings.bagPascals();
            case NO_VENTED_GAS -> readings.sinceVentSeconds();
            case GAS_PRESSURE -> readings.gasKilopascals();
            case STROKES_LEFT -> readings.strokesLeft();
            case PLUG_FITTED,
                    SELF_TEST,
                    ALONE,
                    AFLOAT,
                    INTAKE_WET,
                    JAR_EMPTY,
                    BAY_DRY,
                    INLET_DRY,
                    ON_GROUND,
                    FLOATS_DRY,
                    PROBE_HOME ->
                throw new IllegalArgumentException("permissive : " + permissive + " (expected: one that is a number)");
        };
    }

    /** A wire value as the operator reads it. */
    String text(int value) {
        return String.format(Locale.ROOT, "%." + decimals + "f%s", (double) value / scale, unit);
    }

    /** True if {@code value} holds; {@code live} picks the wider trip limits. */
    boolean holds(int value, boolean live) {
        return value >= (live ? tripLeast : armLeast) && value <= (live ? tripMost : armMost);
    }

    /** The limits in force, for example "≤ 8.0°". */
    String limit(boolean live) {
        int least = live ? tripLeast : armLeast;
        int most = live ? tripMost : armMost;
        if (least == NO_LEAST) {
            return "≤ " + text(most);
        }
        return most == NO_MOST ? "≥ " + text(least) : text(least) + " to " + text(most);
    }
}
