package ouzel.app.desk;

import java.util.Locale;
import java.util.Optional;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;

/** Codes of the wire in words the operator can act on. */
public final class Words {
    private Words() {}

    /** The sampler's name as it stands on the screen. */
    public static String of(Sampler sampler) {
        return sampler.name();
    }

    /** An age, for example "0.1 s" or "75 s". */
    public static String age(long millis) {
        return millis < 10_000
                ? String.format(Locale.ROOT, "%.1f s", millis / 1_000.0)
                : String.format(Locale.ROOT, "%d s", millis / 1_000);
    }

    /** Why an order was refused or failed; empty if there is nothing to say. */
    public static String why(Outcome outcome) {
        if (outcome.stage() == Outcome.Stage.NEVER_SEEN) {
            return "it never reached the payload: nothing moved";
        }
        if (outcome.reason() == Reason.PERMISSIVE) {
            return Permissives.named(outcome.permissive())
                    .map(permissive -> unmet(permissive, outcome.measured(), outcome.limit()))
                    .orElse("a condition this console does not know: code " + outcome.permissive());
        }
        return why(outcome.reason(), outcome.measured(), outcome.limit());
    }

    /** A permissive that does not hold, for example "not level: 11.2° (limit 8.0°)". */
    static String unmet(Permissive permissive, int measured, int limit) {
        Optional<Gauge> gauge = Gauge.of(permissive);
        if (gauge.isEmpty()) {
            return "does not hold, or not for long enough yet: " + permissive.words();
        }
        if (measured == Readings.ABSENT) {
            return "no data for: " + permissive.words();
        }
        String soon = gauge.get().holds(measured, false) ? " for long enough yet: " : ": ";
        return "not " + permissive.words() + soon + gauge.get().text(measured) + " (limit "
                + gauge.get().text(limit) + ")";
    }

    /** A reason with its figures, where it has any. */
    static String why(Reason reason, int measured, int limit) {
        return switch (reason) {
            case TOKEN_EXPIRED -> "the arming ran out after " + limit + " ms: arm again";
            case ORDER_EXPIRED -> "it arrived " + measured + " ms too late to act: check, then arm again";
            case DOSE_OVER_LIMIT -> "asked " + measured + ", the payload allows " + limit;
            case SETTING_OVER_CEILING -> "asked " + measured + ", the payload's ceiling is " + limit;
            case KEEP_ALIVE_LOST -> "the payload did not hear the console for " + measured + " ms";
            case BAG_FULL -> "bag pressure reached " + measured + " Pa";
            case RUN_LIMIT -> "longest run of " + limit + " ms reached";
            case OVER_CURRENT -> "pump current " + measured + " mA passed " + limit + " mA: blocked or jammed";
            case BATTERY_SAG -> "battery sagged to " + measured + " mV under " + limit + " mV";
            case PROBE_AWAY -> "the probe was not home after " + measured + " ms: hold take-off";
            default -> brief(reason);
        };
    }

    /** A reason without figures; empty for none. */
    static String brief(Reason reason) {
        return switch (reason) {
            case NONE -> "";
            case PERMISSIVE -> "a condition on board does not hold";
            case NOT_ARMED -> "the sampler is not armed: arm it again";
            case WRONG_TOKEN -> "the arming token is not valid any more: arm again";
            case TOKEN_EXPIRED -> "the arming ran out";
            case ORDER_EXPIRED -> "the order came too late to act";
            case ORDER_FROM_FUTURE -> "its expiry is not believable: check the clocks, then arm again";
            case OTHER_ACTIVE -> "another sampler is armed or acting: stop it or wait";
            case SAMPLER_USED -> "its container or probe is used: fit a fresh one and record it";
            case SAMPLER_FAULT -> "it is in fault: look at it on the ground, then reload";
            case DOSE_OVER_LIMIT -> "the dose passes the payload's limit";
            case NOT_FITTED -> "this payload has no such sampler";
            case SETTING_OVER_CEILING -> "a setting passes the payload's ceiling";
            case BUSY -> "it is armed or acting: stop it first";
            case BY_STOP -> "stopped by the operator";
            case BY_SAFE_ALL -> "ended by safe-all";
            case KEEP_ALIVE_LOST -> "the payload did not hear the console";
            case DOSE_REACHED -> "dose reached";
            case JAR_FULL -> "the jar's level switch closed";
            case BAG_FULL -> "bag pressure reached its stop limit";
            case RUN_LIMIT -> "longest run reached";
            case OVER_CURRENT -> "pump current passed its limit: blocked or jammed";
            case NO_CURRENT -> "no pump current: a wire is open";
            case BATTERY_SAG -> "the battery sagged";
            case PROBE_STAYED -> "the probe did not leave its home switch";
            case PROBE_AWAY -> "the probe did not come home: hold take-off";
            case RESTARTED -> "the payload restarted in the middle of it";
            case NEW_SESSION -> "a new session was opened";
        };
    }

    /** An event of the payload as a sentence. */
    static String of(Event event) {
        return switch (event.kind()) {
            case BOOTED -> "Payload started (" + bootCause(event.value()) + "); all outputs off.";
            case SESSION_OPENED -> "Payload opened a session.";
            case ARMED -> "Armed on board for " + age(event.value()) + ".";
            case DISARMED -> "Disarmed on board" + reasonOnly(event) + ".";
            case DRAW_STARTED -> "Pump started, " + event.value() + " mL asked.";
            case DRAW_COMPLETED -> "Draw completed, " + event.value() + " mL metered on board.";
            case DRAW_ENDED_EARLY -> "Draw ended early at " + event.value() + " mL" + reasonOnly(event) + ".";
            case STROKE_STARTED -> "Valve opened for " + event.value() + " ms.";
            case STROKE_COMPLETED -> "Probe away and home again after " + event.value() + " ms.";
            case STROKE_FAILED -> "Stroke failed after " + event.value() + " ms" + reasonOnly(event) + ".";
            case FAULT -> "Fault on board" + reasonOnly(event) + ".";
            case SAFED -> "Safe-all done on board within " + event.value() + " ms.";
            case RELOADED -> "Fresh container or probe recorded on board.";
            case SETTINGS_CHANGED -> "Settings changed on board.";
            case KEEP_ALIVE_LOST -> "Payload did not hear the console for " + event.value() + " ms.";
            case EVENTS_DROPPED -> event.value() + " events were dropped on board: its store was full.";
        };
    }

    private static String bootCause(int code) {
        return switch (code) {
            case 0 -> "power on";
            case 1 -> "brown-out";
            case 2 -> "watchdog";
            default -> "cause " + code;
        };
    }

    private static String reasonOnly(Event event) {
        Optional<Permissive> permissive = event.kind() == Event.Kind.DISARMED && event.reason() == Reason.PERMISSIVE
                ? Permissives.named(event.value())
                : Optional.empty();
        String why = permissive.map(unmet -> "not " + unmet.words()).orElse(brief(event.reason()));
        return why.isEmpty() ? "" : ": " + why;
    }

    /** Looks permissives up by wire code. */
    private static final class Permissives {
        private static Optional<Permissive> named(int code) {
            for (Permissive permissive : Permissive.values()) {
                if (permissive.code() == code) {
                    return Optional.of(permissive);
                }
            }
            return Optional.empty();
        }
    }
}
