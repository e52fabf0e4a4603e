package ouzel.app.flight;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import ouzel.app.desk.Act;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Effect;
import ouzel.app.desk.Moment;
import ouzel.app.exit.Refusal;
import ouzel.app.journal.JournalFiles;
import ouzel.app.journal.JournalHeader;
import ouzel.app.journal.Recorder;
import ouzel.app.link.Line;
import ouzel.app.link.LineListener;
import ouzel.app.link.LinkLoop;
import ouzel.app.link.Port;
import ouzel.app.screen.DeskFeed;
import ouzel.app.screen.PilotFeed;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.ParserCounts;
import ouzel.protocol.session.PairingKey;

/**
 * A console put to work in real time: on a port, or on the simulated payload inside this program.
 *
 * <p>All that it knows lives on the link thread; the screen reads the newest state and hands acts over.
 *
 * <p><b>Thread:</b> any for the public methods; {@link #close} waits and must not be called on the screen's thread.
 */
public final class LiveDesk implements DeskFeed, AutoCloseable {
    private static final Duration TICK = Duration.ofMillis(100);

    private final LinkLoop loop = new LinkLoop();
    private final Recorder recorder;
    private final Console console;
    private final Path journal;
    private final Consumer<Effect.Cue> sounds;
    private final AtomicReference<DeskState> latest = new AtomicReference<>();
    private Optional<InnerRehearsal> inner = Optional.empty();
    private final CountDownLatch closed = new CountDownLatch(1);

    private Line line;
    private ParserCounts counts = ParserCounts.NONE;
    /** Told the number of the payload that a session is open with. */
    private IntConsumer met = payload -> {};

    /**
     * What a live desk is opened with.
     *
     * @param port where the payload is; empty for a simulated one inside the program
     * @param key the pairing key
     * @param rehearsal true if the payload is a simulated one, wherever it runs
     * @param seed what all chance of the simulated payload comes from
     * @param journals the directory for the journal
     * @param site the site's name
     * @param programVersion for the journal's header
     */
    public record Request(
            Optional<Port> port,
            PairingKey key,
            boolean rehearsal,
            long seed,
            Path journals,
            String site,
            String programVersion) {
        /** Refuses the rehearsal key, which everybody knows, on a serial line. */
        public Request {
            SerialKey.require(port.filter(Port.Serial.class::isInstance).isPresent(), key);
        }
    }

    /**
     * Opens the journal, then the port.
     *
     * @param sounds plays cues; called on the link thread and must not wait
     * @throws Refusal if no journal can be made: a desk that keeps no record is not opened
     */
    public LiveDesk(Request request, Consumer<Effect.Cue> sounds) throws Refusal {
        this.sounds = sounds;
        JournalHeader header = new JournalHeader(Instant.now(), request.rehearsal(), request.programVersion());
        JournalFiles.Opened opened;
        try {
            opened = JournalFiles.threaded(request.journals(), header, request.site(), loop, this::journalFailed);
        } catch (Refusal refusal) {
            loop.close();
            throw refusal;
        }
        journal = opened.file();
        recorder = opened.recorder();
        Setup setup = new Setup(
                request.key(), 0, Randomness.nonces(), Randomness.firstOrderId(), request.rehearsal(), request.site());
        console = new Console(setup, this::now, recorder, new Out(), this.sounds);
        latest.set(console.state());
        // Waiting here is short, and whoever has a desk has its pilot too.
        CompletableFuture.runAsync(() -> start(request), loop).join();
    }

    private void start(Request request) {
        if (request.port().isPresent()) {
            PayloadLine payloadLine = new PayloadLine(loop, request.port().get(), request.key(), new Ear());
            line = payloadLine.line();
            met = payloadLine::met;
        } else {
            inner = Optional.of(new InnerRehearsal(loop, request, new Ear()));
            line = inner.get().consoleLine();
        }
        loop.every(TICK, () -> {
            console.tick();
            inner.ifPresent(rehearsal -> console.tellTruth(rehearsal.truth()));
            publish();
        });
    }

    /** The simulated pilot, if the payload is simulated inside this program. */
    public Optional<PilotFeed> pilot() {
        return inner.map(PilotFeed.class::cast);
    }

    /** Where this sortie is recorded. */
    public Path journal() {
        return journal;
    }

    @Override
    public DeskState latest() {
        return latest.get();
    }

    @Override
    public void act(Act act) {
        loop.execute(() -> {
            console.act(act);
            publish();
        });
    }

    /** Waits until {@link #close} was called. */
    public void awaitClosed() throws InterruptedException {
        closed.await();
    }

    /** Lets the payload go, secures the journal and gives the port back. Idempotent. */
    @Override
    public void close() {
        if (closed.getCount() > 0) {
            loop.close();
            recorder.close();
            closed.countDown();
        }
    }

    private Moment now() {
        return new Moment(loop.nowNanos(), System.currentTimeMillis());
    }

    private void publish() {
        latest.set(console.state());
    }

    private void journalFailed(String sentence) {
        console.journalChanged(false, sentence);
        publish();
    }

    /** What the console sends goes to whatever line there is. */
    private final class Out implements FrameOut {
        @Override
        public void send(Frame frame) {
            line.send(frame);
        }

        @Override
        public void sendUrgent(Frame frame) {
            line.sendUrgent(frame);
        }

        @Override
        public ParserCounts counts() {
            return counts;
        }
    }

    /** What the line hears goes to the console. */
    private final class Ear implements LineListener {
        @Override
        public void opened(String where) {
            console.lineUp("Line open: " + where + ".");
            publish();
        }

        @Override
        public void frame(Frame frame, long nowNanos) {
            console.heard(frame);
            if (console.state().session().open()) {
                met.accept(console.state().session().payload());
            }
            publish();
        }

        @Override
        public void counts(ParserCounts next) {
            counts = next;
        }

        @Override
        public void garbled(String sentence) {
            console.strangerHeard(sentence);
            publish();
        }

        @Override
        public void lost(String sentence) {
            console.lineDown(sentence);
            publish();
        }

        @Override
        public void failed(String sentence) {
            console.lineDown(sentence);
            publish();
        }
    }
}
