package ouzel.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import ouzel.app.exit.ExitCode;
import ouzel.app.journal.Sorties;
import ouzel.app.link.SerialPorts;

/** The real programs behind the commands that need no window. */
@Timeout(60)
class RehearseAndPlayBackTest {
    @TempDir
    Path directory;

    private final StringWriter err = new StringWriter();

    /** What one command line printed, and how it ended. */
    private record Run(int code, List<String> lines) {}

    @Test
    void playbackGivesTheSamplesThatTheRehearsalGave() {
        Run flown = run("rehearse", "--headless", "--seed", "42", "--out", directory.toString());
        Run played = run("playback", journal(42).toString(), "--headless");

        assertThat(flown.lines()).isNotEmpty().allMatch(line -> line.startsWith("sample "));
        assertThat(played.lines()).isEqualTo(flown.lines());
        assertThat(played.code()).isEqualTo(flown.code());
    }

    @Test
    void theSameSeedGivesTheSameJournalByteForByteAndAnotherSeedAnother() throws Exception {
        run("rehearse", "--headless", "--seed", "7", "--out", directory.toString());
        byte[] first = Files.readAllBytes(journal(7));
        run("rehearse", "--headless", "--seed", "7", "--out", directory.toString());
        run("rehearse", "--headless", "--seed", "8", "--out", directory.toString());

        assertThat(Files.readAllBytes(journal(7))).isEqualTo(first);
        assertThat(Files.readAllBytes(journal(8))).isNotEqualTo(first);
    }

    @Test
    void aRehearsalsJournalCutInItsMiddleStillPlaysUpToThere() throws Exception {
        run("rehearse", "--headless", "--seed", "42", "--out", directory.toString());
        Sorties.cut(journal(42), (int) (Files.size(journal(42)) / 2));

        Run played = run("playback", journal(42).toString(), "--headless");

        assertThat(played.code()).isEqualTo(ExitCode.JOURNAL_CUT.code());
        assertThat(err.toString()).contains("REHEARSAL at Quarry north shelf").contains("were dropped");
    }

    @Test
    void theKeyIsNowhereInWhatARehearsalWrites() throws Exception {
        run("rehearse", "--headless", "--seed", "42", "--out", directory.toString());

        try (var files = Files.list(directory)) {
            for (Path file : files.toList()) {
                assertThat(Files.readString(file, StandardCharsets.ISO_8859_1))
                        .doesNotContainIgnoringCase("no secret!!")
                        .doesNotContainIgnoringCase("6e6f20736563726574");
            }
        }
    }

    private Path journal(int seed) {
        return directory.resolve("rehearsal-" + seed + ".ouzel");
    }

    private Run run(String... words) {
        StringWriter out = new StringWriter();
        int code = new Shell(
                        new Flights(),
                        new Screens(() -> false),
                        new Home(directory),
                        () -> new SerialPorts.Found(List.of(), ""))
                .printingTo(new PrintWriter(out, true), new PrintWriter(err, true))
                .run(words);
        return new Run(code, out.toString().lines().toList());
    }
}
