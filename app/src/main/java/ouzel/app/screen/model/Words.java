package ouzel.app.screen.model;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import ouzel.app.desk.Moment;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Sampler;

/** Numbers and times as the screen writes them: a point for decimals in every locale, always with a unit. */
final class Words {
    /** Stands where a number would be if there were one. */
    static final String NO_VALUE = "–";

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private Words() {}

    static String age(long ageMillis) {
        if (ageMillis >= 3_600_000) {
            return "over 1 h old";
        }
        return ageMillis >= 60_000
                ? String.format(Locale.ROOT, "%d min old", ageMillis / 60_000)
                : String.format(Locale.ROOT, "%.1f s old", ageMillis / 1000.0);
    }

    static String left(int seconds) {
        return seconds > 120 ? seconds / 60 + " min left" : seconds + " s left";
    }

    static String after(double seconds) {
        return String.format(Locale.ROOT, seconds < 100 ? "+%.2f s" : "+%.0f s", seconds);
    }

    static String clock(Moment moment, ZoneId zone) {
        return CLOCK.format(Instant.ofEpochMilli(moment.utcMillis()).atZone(zone));
    }

    static String payloadClock(long millis) {
        long seconds = millis / 1000;
        return String.format(Locale.ROOT, "t+%02d:%02d:%02d", seconds / 3600, seconds / 60 % 60, seconds % 60);
    }

    static String percent(double ratio) {
        return Double.isFinite(ratio) ? String.format(Locale.ROOT, "%.1f %%", ratio * 100) : NO_VALUE + " %";
    }

    static String millis(double millis) {
        return Double.isFinite(millis) ? String.format(Locale.ROOT, "%.0f ms", millis) : NO_VALUE + " ms";
    }

    /** {@code raw / divisor} with {@code decimals} decimals and {@code unit}; a dash where the sensor is absent. */
    static String reading(int raw, double divisor, int decimals, String unit) {
        return raw == Readings.ABSENT
                ? NO_VALUE + " " + unit
                : String.format(Locale.ROOT, "%." + decimals + "f %s", raw / divisor, unit);
    }

    static String unit(Sampler sampler) {
        return sampler.isPumped() ? "mL" : "ms";
    }

    /** What is changed before the next sample. */
    static String container(Sampler sampler) {
        return switch (sampler) {
            case WATER -> "jar";
            case AIR -> "bag";
            case SOIL -> "probe tip";
        };
    }
}
