package ouzel.app.swarm;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import ouzel.app.swarm.Script.Line;
import ouzel.simulator.plant.PayloadProfile;
import ouzel.simulator.profile.ProfileFile;

/** Flies many sorties, one a seed, and shortens the first that breaks a rule. */
final class Swarm {
    private final PayloadProfile profile = ProfileFile.reference();

    /**
     * What many sorties came to.
     *
     * @param sorties how many were flown to their end
     * @param starts how often a pump or the valve was switched on
     * @param virtualMillis flown time, ms
     * @param failure the first failure, shortened and in words; empty if every rule held
     */
    record Result(int sorties, long starts, long virtualMillis, Optional<String> failure) {}

    /** Flies the sorties of {@code count} seeds from {@code firstSeed} on, until one fails. */
    Result fly(long firstSeed, int count) {
        long starts = 0;
        long millis = 0;
        for (int flown = 0; flown < count; flown++) {
            Script script = ScriptWriter.of(firstSeed + flown);
            try {
                Sortie.Flown sortie = new Sortie(script, profile).fly();
                starts += sortie.starts();
                millis += sortie.millis();
            } catch (Violation violation) {
                return new Result(flown, starts, millis, Optional.of(report(script, violation)));
            }
        }
        return new Result(count, starts, millis, Optional.empty());
    }

    /** Flies one script; what broke, if anything did. */
    Optional<Violation> violation(Script script) {
        try {
            new Sortie(script, profile).fly();
            return Optional.empty();
        } catch (Violation violation) {
            return Optional.of(violation);
        }
    }

    String report(Script failing, Violation violation) {
        Script shortest = Shortening.of(
                failing,
                script -> violation(script)
                        .filter(other -> other.rule().equals(violation.rule()))
                        .isPresent());
        String keep = shortest.lines().stream()
                .map(line -> String.valueOf(line.number()))
                .collect(Collectors.joining(","));
        return "seed " + failing.seed() + ": " + violation.getMessage() + "\n shortened to "
                + shortest.lines().size() + " of " + failing.lines().size() + " lines: "
                + violation(shortest).orElse(violation).getMessage() + "\n" + words(shortest.lines())
                + " again with -Dswarm.seed=" + failing.seed() + " -Dswarm.keep=" + (keep.isEmpty() ? "none" : keep);
    }

    private static String words(List<Line> lines) {
        return lines.stream()
                .map(line -> String.format("  %6d ms  %s%n", line.atMillis(), line.happening()))
                .collect(Collectors.joining());
    }
}
