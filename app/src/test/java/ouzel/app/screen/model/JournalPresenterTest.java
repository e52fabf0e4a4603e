package ouzel.app.screen.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Note;
import ouzel.protocol.message.Sampler;

class JournalPresenterTest {
    private final JournalPresenter presenter = new JournalPresenter(ZoneOffset.UTC);
    private final List<Note> notes = List.of(
            note(3, Optional.of(Sampler.AIR), Note.Weight.PLAIN),
            note(2, Optional.of(Sampler.WATER), Note.Weight.PINNED),
            note(1, Optional.empty(), Note.Weight.ATTENTION));

    @Test
    void whatIsPinnedStandsApart() {
        JournalView view = presenter.view(notes, Optional.empty());

        assertThat(view.pinned()).extracting(JournalView.Line::note).containsExactly(2L);
        assertThat(view.lines()).extracting(JournalView.Line::note).containsExactly(3L, 1L);
    }

    @Test
    void aFilterNeverHidesWhatIsPinned() {
        JournalView view = presenter.view(notes, Optional.of(Sampler.AIR));

        assertThat(view.pinned()).hasSize(1);
        assertThat(view.lines()).extracting(JournalView.Line::note).containsExactly(3L);
    }

    @Test
    void aLineHasClockTimeSamplerAndSentence() {
        JournalView view = presenter.view(notes, Optional.empty());

        assertThat(view.lines().get(0).spoken()).isEqualTo("08:00:00  AIR  It happened.");
    }

    private static Note note(long number, Optional<Sampler> sampler, Note.Weight weight) {
        return new Note(number, new Moment(0, 1_777_881_600_000L), sampler, weight, "It happened.");
    }
}
