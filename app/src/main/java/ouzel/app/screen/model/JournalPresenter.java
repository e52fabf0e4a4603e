package ouzel.app.screen.model;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import ouzel.app.desk.Note;
import ouzel.protocol.message.Sampler;

/** The journal list, pinned notes apart, filtered by sampler. */
public final class JournalPresenter {
    private final ZoneId zone;

    /** @param zone the zone that clock times are shown in */
    public JournalPresenter(ZoneId zone) {
        this.zone = zone;
    }

    /**
     * The list as it is shown. Pinned notes are never filtered away.
     *
     * @param notes newest first
     * @param only the only sampler to show; empty for all
     */
    public JournalView view(List<Note> notes, Optional<Sampler> only) {
        List<JournalView.Line> pinned = notes.stream()
                .filter(note -> note.weight() == Note.Weight.PINNED)
                .map(this::line)
                .toList();
        List<JournalView.Line> lines = notes.stream()
                .filter(note -> note.weight() != Note.Weight.PINNED)
                .filter(note -> only.isEmpty() || note.sampler().equals(only))
                .map(this::line)
                .toList();
        return new JournalView(pinned, lines);
    }

    private JournalView.Line line(Note note) {
        Attention attention =
                switch (note.weight()) {
                    case PLAIN -> Attention.CALM;
                    case ATTENTION -> Attention.NOTICE;
                    case PINNED -> Attention.ALARM;
                };
        return new JournalView.Line(
                note.number(),
                Words.clock(note.at(), zone),
                note.sampler().map(Sampler::name).orElse(""),
                note.sentence(),
                attention);
    }
}
