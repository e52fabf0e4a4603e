package ouzel.app.link;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.ParserCounts;

/**
 * A line to one port that is opened again whenever it is lost or cannot be opened, each time with a fresh channel,
 * until it is closed. Its listener hears each change once: a failure that repeats itself is not told again.
 *
 * <p>Thread: any; everything is done on the link thread.
 */
public final class Reconnector implements Line {
    private static final String GOES_ON = " Trying again by itself.";

    private final LinkLoop loop;
    private final Port port;
    private final LineListener listener;
    private final RetryPace pace = new RetryPace();
    private final AtomicLong dropped = new AtomicLong();
    private final CompletableFuture<Void> finished = new CompletableFuture<>();
    private FrameLine current;
    private LinkLoop.Appointment nextTry = () -> {};
    private String lastFailure = "";
    private final AtomicInteger tries = new AtomicInteger();
    private boolean isUp;
    private boolean isClosed;

    private Reconnector(LinkLoop loop, Port port, LineListener listener) {
        this.loop = loop;
        this.port = port;
        this.listener = listener;
    }

    /** Opens a line to {@code port} and keeps it open. */
    public static Reconnector start(LinkLoop loop, Port port, LineListener listener) {
        Reconnector line = new Reconnector(loop, port, listener);
        loop.execute(line::open);
        return line;
    }

    private void open() {
        if (!isClosed) {
            tries.incrementAndGet();
            current = FrameLine.connect(loop, port, new Attempt(), dropped);
        }
    }

    private void openAfter(long pauseNanos) {
        isUp = false;
        nextTry = loop.after(Duration.ofNanos(pauseNanos), this::open);
    }

    /** How often the port has been tried. */
    public int tries() {
        return tries.get();
    }

    @Override
    public LineKind kind() {
        return port.kind();
    }

    @Override
    public void send(Frame frame) {
        loop.run(() -> {
            if (isUp) {
                current.send(frame);
            } else {
                dropped.incrementAndGet();
            }
        });
    }

    @Override
    public void sendUrgent(Frame frame) {
        loop.run(() -> {
            if (isUp) {
                current.sendUrgent(frame);
            } else {
                dropped.incrementAndGet();
            }
        });
    }

    @Override
    public long dropped() {
        return dropped.get();
    }

    @Override
    public CompletionStage<Void> close() {
        loop.run(() -> {
            if (!isClosed) {
                isClosed = true;
                isUp = false;
                nextTry.cancel();
                closeCurrent();
            }
        });
        return finished;
    }

    private void closeCurrent() {
        if (current == null) {
            finished.complete(null);
        } else {
            current.close().thenRun(() -> finished.complete(null));
        }
    }

    /** One try, and the connection that may come of it. */
    private final class Attempt implements LineListener {
        @Override
        public void opened(String where) {
            pace.opened(loop.nowNanos());
            isUp = true;
            lastFailure = "";
            listener.opened(where);
        }

        @Override
        public void frame(Frame frame, long nowNanos) {
            listener.frame(frame, nowNanos);
        }

        @Override
        public void counts(ParserCounts counts) {
            listener.counts(counts);
        }

        @Override
        public void garbled(String sentence) {
            listener.garbled(sentence);
        }

        @Override
        public void lost(String sentence) {
            openAfter(pace.pauseAfterLoss(loop.nowNanos()));
            listener.lost(sentence + GOES_ON);
        }

        @Override
        public void failed(String sentence) {
            if (current.hasDisturbedDevice()) {
                pace.opened(loop.nowNanos());
            }
            openAfter(pace.pauseAfterFailure(loop.nowNanos()));
            if (!sentence.equals(lastFailure)) {
                lastFailure = sentence;
                listener.failed(sentence + GOES_ON);
            }
        }
    }
}
