package ouzel.app.journal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;

/**
 * Writes a journal on a thread of its own.
 *
 * <p>The desk thread hands entries over through a bounded queue and never waits. The writer takes all that has
 * gathered, writes it in one go, forces it to the disk once if anybody asked, and at least once a second anyway, and
 * only then calls back. After the first failure (a full disk, a directory that is gone, a disk that stands still)
 * nothing more is written, so that the file stays whole up to there; the failure is told once, and every later {@link
 * #whenDurable} fails with the same sentence.
 *
 * <p>Thread: {@link #append}, {@link #whenDurable} and {@link #close} from the desk thread; all callbacks through the
 * executor given at construction.
 */
final class JournalWriter implements Recorder {
    /** Entries that may wait: minutes of telemetry. */
    static final int QUEUE_LENGTH = 8_192;

    private static final int LARGEST_BATCH = 1_024;
    private static final long FORCE_EVERY_NANOS = TimeUnit.SECONDS.toNanos(1);
    private static final long CLOSE_WITHIN_MILLIS = 5_000;

    private final JournalStore store;
    private final Executor desk;
    private final Consumer<String> failed;
    private final BlockingQueue<Job> queue = new ArrayBlockingQueue<>(QUEUE_LENGTH);
    /** Why nothing is written any more; empty while all is well. Set once, by either thread. */
    private final AtomicReference<String> failure = new AtomicReference<>("");

    private final Thread thread = new Thread(this::run, "ouzel-journal");

    /** Belong to the writer thread. */
    private boolean unforced;

    private long forcedAtNanos = System.nanoTime();

    private sealed interface Job {}

    private record Write(Entry entry) implements Job {}

    private record Secure(Runnable done, Consumer<String> failed) implements Job {}

    private record Stop() implements Job {}

    /** Starts the writer thread; {@code store} is its alone from here on. */
    JournalWriter(JournalStore store, Executor desk, Consumer<String> failed) {
        this.store = store;
        this.desk = desk;
        this.failed = failed;
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void append(Moment at, Stimulus stimulus) {
        if (failure.get().isEmpty() && !queue.offer(new Write(new Entry(at, stimulus)))) {
            fail(WriteFailure.tooSlow(store.name()));
        }
    }

    @Override
    public void whenDurable(Runnable done, Consumer<String> notDone) {
        Secure secure = new Secure(done, notDone);
        if (!failure.get().isEmpty()) {
            answer(secure);
        } else if (!queue.offer(secure)) {
            fail(WriteFailure.tooSlow(store.name()));
            answer(secure);
        } else if (!failure.get().isEmpty() && queue.remove(secure)) {
            // The writer ended between the two looks and will not come for it.
            answer(secure);
        }
    }

    /** Waits at most {@value #CLOSE_WITHIN_MILLIS} ms for the disk. */
    @Override
    public void close() {
        try {
            if (queue.offer(new Stop(), CLOSE_WITHIN_MILLIS, TimeUnit.MILLISECONDS)) {
                thread.join(CLOSE_WITHIN_MILLIS);
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        failure.compareAndSet("", WriteFailure.CLOSED);
    }

    private void run() {
        List<Job> batch = new ArrayList<>(LARGEST_BATCH);
        boolean stopped = false;
        try {
            while (!stopped) {
                batch.clear();
                take(batch);
                process(batch);
                stopped = batch.stream().anyMatch(Stop.class::isInstance);
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        } finally {
            end(stopped);
        }
    }

    private void take(List<Job> batch) throws InterruptedException {
        Job first = queue.poll(FORCE_EVERY_NANOS, TimeUnit.NANOSECONDS);
        if (first != null) {
            batch.add(first);
            queue.drainTo(batch, LARGEST_BATCH - 1);
        }
    }

    private void process(List<Job> batch) {
        if (failure.get().isEmpty()) {
            try {
                write(batch);
                forceIfDue(batch.stream().anyMatch(Secure.class::isInstance));
            } catch (IOException trouble) {
                fail(WriteFailure.sentence(store.name(), trouble));
            }
        }
        for (Job job : batch) {
            if (job instanceof Secure secure) {
                answer(secure);
            }
        }
    }

    private void write(List<Job> batch) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (Job job : batch) {
            if (job instanceof Write write) {
                bytes.write(JournalCodec.write(write.entry()));
            }
        }
        if (bytes.size() > 0) {
            unforced = true;
            store.write(ByteBuffer.wrap(bytes.toByteArray()));
        }
    }

    private void forceIfDue(boolean asked) throws IOException {
        long now = System.nanoTime();
        if (asked || unforced && now - forcedAtNanos >= FORCE_EVERY_NANOS) {
            store.force();
            unforced = false;
            forcedAtNanos = now;
        }
    }

    private void answer(Secure secure) {
        String sentence = failure.get();
        desk.execute(sentence.isEmpty() ? secure.done() : () -> secure.failed().accept(sentence));
    }

    private void fail(String sentence) {
        if (failure.compareAndSet("", sentence)) {
            desk.execute(() -> failed.accept(sentence));
        }
    }

    /** Secures and lets go of the file, then answers whoever still waits; nobody is left without an answer. */
    private void end(boolean asked) {
        try {
            if (failure.get().isEmpty()) {
                forceIfDue(unforced);
            }
            store.close();
        } catch (IOException trouble) {
            fail(WriteFailure.sentence(store.name(), trouble));
        }
        if (!asked) {
            fail(WriteFailure.brokeDown(store.name()));
        }
        failure.compareAndSet("", WriteFailure.CLOSED);
        List<Job> left = new ArrayList<>();
        queue.drainTo(left);
        process(left);
    }
}
