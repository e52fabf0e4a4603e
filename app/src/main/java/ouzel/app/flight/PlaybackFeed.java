package ouzel.app.flight;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import ouzel.app.desk.Act;
import ouzel.app.desk.Desk;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Moment;
import ouzel.app.exit.Refusal;
import ouzel.app.journal.Entry;
import ouzel.app.journal.JournalReader;
import ouzel.app.link.LinkLoop;
import ouzel.app.screen.DeskFeed;

/**
 * A journal shown again at the pace at which it happened: the same fold, fed from the file. Acts are not listened to.
 *
 * <p><b>Thread:</b> any for the public methods.
 */
public final class PlaybackFeed implements DeskFeed, AutoCloseable {
    private static final Duration STEP = Duration.ofMillis(20);
    /** Silence in the file longer than this is skipped, ns. */
    private static final long LONGEST_PAUSE_NANOS = 2_000_000_000L;

    private final LinkLoop loop = new LinkLoop();
    private final JournalReader reader;
    private final AtomicReference<DeskState> latest;
    private Optional<Entry> next;
    private long playedNanos;
    private long steppedAtNanos;

    /**
     * Opens a journal and starts to play it.
     *
     * @throws Refusal if it cannot be read
     */
    public PlaybackFeed(Path journal) throws Refusal {
        reader = JournalReader.open(journal);
        next = reader.next();
        Moment first = next.map(Entry::at)
                .orElse(new Moment(0, reader.header().created().toEpochMilli()));
        latest = new AtomicReference<>(Desk.start(first));
        playedNanos = first.nanos();
        steppedAtNanos = loop.nowNanos();
        loop.every(STEP, this::step);
    }

    private void step() {
        long now = loop.nowNanos();
        playedNanos += now - steppedAtNanos;
        steppedAtNanos = now;
        if (next.isPresent() && next.get().at().nanos() - playedNanos > LONGEST_PAUSE_NANOS) {
            playedNanos = next.get().at().nanos();
        }
        DeskState state = latest.get();
        while (next.isPresent() && next.get().at().nanos() <= playedNanos) {
            state = Desk.fold(state, next.get().at(), next.get().stimulus()).state();
            next = readOn();
        }
        latest.set(state);
    }

    private Optional<Entry> readOn() {
        try {
            return reader.next();
        } catch (Refusal cut) {
            return Optional.empty();
        }
    }

    /** True if the journal is of a rehearsal. */
    public boolean isRehearsal() {
        return reader.header().rehearsal();
    }

    @Override
    public boolean isLive() {
        return false;
    }

    @Override
    public DeskState latest() {
        return latest.get();
    }

    @Override
    public void act(Act act) {
        // What happened has happened: a playback does nothing but show.
    }

    @Override
    public void close() {
        loop.close();
    }
}
