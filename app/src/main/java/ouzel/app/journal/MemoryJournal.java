package ouzel.app.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;

/** A journal that lives and dies with the program: for sorties in virtual time. Thread: desk. */
public final class MemoryJournal implements Recorder {
    private final List<Entry> entries = new ArrayList<>();

    @Override
    public void append(Moment at, Stimulus stimulus) {
        entries.add(new Entry(at, stimulus));
    }

    /** Calls {@code done} at once: there is no power to lose in virtual time. */
    @Override
    public void whenDurable(Runnable done, Consumer<String> failed) {
        done.run();
    }

    @Override
    public void close() {
        // Nothing is held but memory, and what was recorded stays readable.
    }

    /** A copy of all that was appended, oldest first. */
    public List<Entry> entries() {
        return List.copyOf(entries);
    }
}
