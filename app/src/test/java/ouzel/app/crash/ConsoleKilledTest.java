package ouzel.app.crash;

import static java.util.concurrent.TimeUnit.MILLISECONDS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import ouzel.app.desk.DeskState;
import ouzel.app.exit.Refusal;
import ouzel.app.flight.LiveDesk;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Sampler;

/**
 * The console's process is killed at random instants of a sortie, again and again over the same payload. Every kill
 * leaves a journal; together they must hold all that the payload ever did or was made to do.
 */
@Timeout(240)
@Execution(ExecutionMode.SAME_THREAD)
final class ConsoleKilledTest {
    private static final int KILLS = Integer.getInteger("crash.kills", 50);
    private static final long SEED = Long.getLong("crash.seed", 4);
    private static final int SHORTEST_LIFE_MILLIS = 500;
    private static final int LONGEST_LIFE_MILLIS = 2_200;

    private final SplittableRandom chance = new SplittableRandom(SEED);
    private final Set<Long> journalledOrders = new HashSet<>();
    private final Set<Long> journalledEvents = new HashSet<>();
    private final List<String> unexplained = new ArrayList<>();
    private long records;
    private long reportedStates;
    private long reportedBehindTheJournal;

    @TempDir
    private Path scratch;

    @Test
    void nothingThatLeftAConsoleOrThatThePayloadWasToldToForgetIsLostOverFiftyKills() throws Exception {
        try (Witness witness = new Witness(SEED)) {
            for (int i = 0; i < KILLS; i++) {
                killOne(witness.port(), Files.createDirectory(scratch.resolve("console-" + i)));
            }
            resolveInTheEnd(witness, Files.createDirectory(scratch.resolve("survivor")));
            Files.writeString(Path.of("target", "console-killed.txt"), figures(witness.testimony()) + "\n");

            assertThat(unexplained)
                    .as("states reported that the journal does not fold to")
                    .isEmpty();
            assertNothingIsLost(witness.testimony());
        }
    }

    private void killOne(int port, Path home) throws Exception {
        Path report = home.resolve("report.txt");
        Process console = OtherJava.start(
                home,
                home.resolve("printed.txt"),
                ReportingConsole.class,
                String.valueOf(port),
                home.toString(),
                report.toString(),
                String.valueOf(chance.nextLong()));
        boolean ended = console.waitFor(chance.nextInt(SHORTEST_LIFE_MILLIS, LONGEST_LIFE_MILLIS), MILLISECONDS);
        console.destroyForcibly().waitFor();

        assertThat(ended).as(Files.readString(home.resolve("printed.txt"))).isFalse();
        List<String> reported = Files.exists(report) ? wholeLines(report) : List.of();
        Optional<Recovered> recovered = Recovered.from(home);
        assertThat(recovered.isPresent() || reported.isEmpty()).isTrue();
        recovered.ifPresent(journal -> compare(journal, reported));
    }

    private void compare(Recovered journal, List<String> reported) {
        records += journal.records();
        reportedStates += reported.size();
        journalledOrders.addAll(journal.orders());
        journalledEvents.addAll(journal.events());
        for (String line : reported) {
            if (Long.parseLong(line.substring(0, line.indexOf(' '))) > journal.lastNanos()) {
                reportedBehindTheJournal++;
            } else if (!journal.lines().contains(line)) {
                unexplained.add(line);
            }
        }
    }

    /** A console that nobody kills hears what is left, and knows how everything ended. */
    private void resolveInTheEnd(Witness witness, Path home) throws IOException, Refusal {
        try (LiveDesk desk = new LiveDesk(ReportingConsole.request(witness.port(), home), cue -> {})) {
            await().atMost(Duration.ofSeconds(20)).until(() -> isUpToDate(desk.latest(), witness.testimony()));
            assertThat(desk.latest().lane(Sampler.AIR).isUnresolved()).isFalse();
        }
        Recovered survivor = Recovered.from(home).orElseThrow();
        journalledOrders.addAll(survivor.orders());
        journalledEvents.addAll(survivor.events());
    }

    private static boolean isUpToDate(DeskState state, Witness.Testimony testimony) {
        long newest = testimony.events().keySet().stream()
                .mapToLong(Long::longValue)
                .max()
                .orElse(0);
        return state.session().open() && testimony.acknowledged() == newest;
    }

    private void assertNothingIsLost(Witness.Testimony testimony) {
        assertThat(testimony.hazardousOrders()).isNotEmpty();
        assertThat(journalledOrders).containsAll(testimony.hazardousOrders());
        assertThat(journalledEvents)
                .containsAll(LongStream.rangeClosed(1, testimony.acknowledged())
                        .boxed()
                        .toList());
        List<Long> starts = testimony.events().values().stream()
                .filter(event -> event.kind() == Event.Kind.DRAW_STARTED)
                .map(Event::orderId)
                .toList();
        assertThat(starts).isNotEmpty().doesNotHaveDuplicates();
    }

    private String figures(Witness.Testimony testimony) {
        String kinds = testimony.events().values().stream()
                .collect(Collectors.groupingBy(Event::kind, Collectors.counting()))
                .toString();
        return KILLS + " kills, seed " + SEED + ": " + records + " records folded, "
                + testimony.hazardousOrders().size() + " arms and triggers arrived, "
                + testimony.events().size() + " events " + kinds + ", " + reportedStates + " states reported, "
                + reportedBehindTheJournal + " of them newer than the journal's end";
    }

    /** What was written of a line when the process was killed does not count. */
    private static List<String> wholeLines(Path report) throws IOException {
        String all = Files.readString(report);
        return all.substring(0, all.lastIndexOf('\n') + 1).lines().toList();
    }
}
