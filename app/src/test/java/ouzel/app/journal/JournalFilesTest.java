package ouzel.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ouzel.app.exit.Refusal;

@Timeout(20)
class JournalFilesTest {
    private static final JournalHeader HEADER = new JournalHeader(Instant.parse("2026-05-04T07:30:09Z"), true, "0.1.0");

    @TempDir
    Path home;

    private final List<String> told = new ArrayList<>();

    @Test
    void aJournalIsNamedAfterItsStartAndItsSite() throws Exception {
        JournalFiles.Opened opened = direct(home);
        opened.recorder().close();

        assertThat(opened.file())
                .hasFileName("2026-05-04T07-30-09Z_reed-bed.ouzel")
                .exists();
    }

    @Test
    void anotherJournalOfTheSameSecondNeverOverwritesTheFirst() throws Exception {
        direct(home).recorder().close();
        JournalFiles.Opened second = direct(home);
        second.recorder().close();

        assertThat(second.file()).hasFileName("2026-05-04T07-30-09Z_reed-bed-2.ouzel");
        try (var files = Files.list(home)) {
            assertThat(files).hasSize(2);
        }
    }

    @Test
    void rehearsalsAndRealSortiesLieInDifferentDirectories() {
        assertThat(JournalFiles.directory(home, true)).isEqualTo(home.resolve(".ouzel/rehearsals"));
        assertThat(JournalFiles.directory(home, false)).isEqualTo(home.resolve(".ouzel/journals"));
    }

    @Test
    void whatAThreadedJournalTookDownReadsBackTheSame() throws Exception {
        List<Entry> entries = Stimuli.run(300);
        JournalFiles.Opened opened =
                JournalFiles.threaded(home.resolve("new/place"), HEADER, "reed bed", Runnable::run, told::add);
        entries.forEach(entry -> opened.recorder().append(entry.at(), entry.stimulus()));
        opened.recorder().close();

        assertThat(read(opened.file())).isEqualTo(entries);
        assertThat(told).isEmpty();
    }

    @Test
    void aDirectoryThatCannotBeMadeIsRefusedWithASentence() throws IOException {
        Path taken = Files.writeString(home.resolve("taken"), "a file");

        assertThatThrownBy(() -> direct(taken))
                .isInstanceOf(Refusal.class)
                .hasMessageStartingWith("No journal can be made in " + taken)
                .hasMessageEndingWith("with --journal DIR.");
    }

    @Test
    void aJournalDeletedUnderTheDeskIsNoticedAtTheNextForce() throws Exception {
        JournalFiles.Opened opened = direct(home);
        Files.delete(opened.file());
        List<String> answers = new ArrayList<>();

        opened.recorder().whenDurable(() -> answers.add("sent"), answers::add);

        assertThat(answers).hasSize(1).first().asString().contains("it is not there");
        assertThat(told).isEqualTo(answers);
        opened.recorder().close();
    }

    @ParameterizedTest
    @CsvSource({
        "Reed bed, reed-bed",
        "'../../etc/passwd', etc-passwd",
        "'Łódź №7: pond', odz-7-pond",
        "'', unnamed",
        "'///', unnamed",
        "'TITLE I', title-i"
    })
    void aSiteNeverLeadsOutOfItsDirectory(String site, String name) {
        assertThat(JournalFiles.fileName(site)).isEqualTo(name);
    }

    private JournalFiles.Opened direct(Path directory) throws Refusal {
        return JournalFiles.direct(directory, HEADER, "Reed bed", told::add);
    }

    private static List<Entry> read(Path file) throws Exception {
        try (JournalReader reader = JournalReader.open(file)) {
            List<Entry> entries = new ArrayList<>();
            for (Optional<Entry> next = reader.next(); next.isPresent(); next = reader.next()) {
                entries.add(next.get());
            }
            return entries;
        }
    }
}
