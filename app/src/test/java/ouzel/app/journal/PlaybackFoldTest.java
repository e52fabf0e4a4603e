package ouzel.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ouzel.app.desk.Desk;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Sample;
import ouzel.app.exit.Refusal;

class PlaybackFoldTest {
    @TempDir
    Path directory;

    @Test
    void arrivesAtTheStateThatTheDeskHad() throws Exception {
        List<Entry> entries = Sorties.withOneUnseenDraw();

        PlaybackFold.Result result = fold(Sorties.file(directory, entries));

        assertThat(plain(result.state())).isEqualTo(plain(folded(entries)));
        assertThat(result.records()).isEqualTo(entries.size());
        assertThat(result.header().rehearsal()).isTrue();
        assertThat(result.state().samples()).extracting(Sample::site).containsExactly("reed bed");
    }

    @Test
    void aCutJournalFoldsToTheStateBeforeTheCut() throws Exception {
        List<Entry> entries = Sorties.withOneUnseenDraw();
        Path file = Sorties.file(directory, entries);
        Sorties.cut(file, 1);

        PlaybackFold.Result result = fold(file);

        assertThat(plain(result.state())).isEqualTo(plain(folded(entries.subList(0, entries.size() - 1))));
        assertThat(result.dropped().orElseThrow().bytes()).isEqualTo(24);
    }

    @Test
    void anEmptyJournalFoldsToADeskThatKnowsNothing() throws Exception {
        PlaybackFold.Result result = fold(Sorties.file(directory, List.of()));

        assertThat(result.records()).isZero();
        assertThat(result.state().now().utcMillis()).isEqualTo(Sorties.BEGUN.toEpochMilli());
    }

    private static PlaybackFold.Result fold(Path file) throws Refusal, java.io.IOException {
        try (JournalReader reader = JournalReader.open(file)) {
            return PlaybackFold.fold(reader);
        }
    }

    private static DeskState folded(List<Entry> entries) {
        DeskState state = Desk.start(entries.get(0).at());
        for (Entry entry : entries) {
            state = Desk.fold(state, entry.at(), entry.stimulus()).state();
        }
        return state;
    }

    /** All of a state in words: runs of samples compare by identity, their text does not matter here. */
    private static String plain(DeskState state) {
        return state.toString().replaceAll("Series@[0-9a-f]+", "Series");
    }
}
