package ouzel.app.swarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ouzel.protocol.message.Sampler;

/**
 * The invariants of the link and of the desk over both ends, the radio and the plant, after every step of many sorties.
 *
 * <p>{@code -Dswarm.sorties=N -Dswarm.seed=S} flies N sorties from seed S on; {@code -Dswarm.keep=3,5} flies the one
 * sortie of the seed with these lines of its script alone. Figures go to {@code target/swarm.txt}.
 */
final class SwarmTest {
    private static final int SORTIES = Integer.getInteger("swarm.sorties", 2_000);
    private static final long SEED = Long.getLong("swarm.seed", 1);
    private static final String KEEP = System.getProperty("swarm.keep", "");

    @Test
    void everyRuleHoldsAfterEveryStepOfEverySortie() throws IOException {
        long begun = System.nanoTime();
        Swarm.Result result = KEEP.isEmpty() ? new Swarm().fly(SEED, SORTIES) : again();
        double seconds = (System.nanoTime() - begun) / 1e9;

        Files.writeString(Path.of("target", "swarm.txt"), figures(result, seconds));

        assertThat(result.failure().orElse("")).isEmpty();
        assertThat(result.starts()).isGreaterThan(result.sorties() / 4);
    }

    @Test
    void aSeedGivesTheSameSortieAgain() {
        Swarm swarm = new Swarm();

        assertThat(swarm.fly(SEED, 5)).isEqualTo(swarm.fly(SEED, 5));
        assertThat(ScriptWriter.of(SEED)).isEqualTo(ScriptWriter.of(SEED));
    }

    @Test
    void aFailingScriptIsShortenedToWhatTheFailureNeeds() {
        Script script = ScriptWriter.of(1);

        Script shortest = Shortening.of(
                script,
                tried -> tried.lines().stream()
                        .anyMatch(line -> line.happening().equals(new Happening.Strive(Sampler.SOIL))
                                || line.happening() instanceof Happening.Strive));

        assertThat(shortest.lines()).hasSize(1);
    }

    private static Swarm.Result again() {
        List<Integer> numbers = KEEP.equals("none")
                ? List.of()
                : Arrays.stream(KEEP.split(",")).map(Integer::valueOf).toList();
        Script script = ScriptWriter.of(SEED).keeping(numbers);
        Optional<Violation> violation = new Swarm().violation(script);
        return new Swarm.Result(1, 1, 0, violation.map(Violation::getMessage));
    }

    private static String figures(Swarm.Result result, double seconds) {
        return String.format(
                Locale.ROOT,
                "%d sorties from seed %d in %.1f s: %.1f a second, %d starts, %.0f s flown, %.0f times real time%n%s%n",
                result.sorties(),
                SEED,
                seconds,
                result.sorties() / seconds,
                result.starts(),
                result.virtualMillis() / 1e3,
                result.virtualMillis() / 1e3 / seconds,
                result.failure().orElse("every rule held"));
    }
}
