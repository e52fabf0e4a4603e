package ouzel.app.link;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.awaitility.Awaitility;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.ParserCounts;

/** Remembers what a line told. Written on the link thread, read by the test. */
final class LineLog implements LineListener {
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final List<String> events = new CopyOnWriteArrayList<>();
    private final List<Frame> frames = new CopyOnWriteArrayList<>();
    private final List<ParserCounts> counts = new CopyOnWriteArrayList<>();
    private final List<Long> times = new CopyOnWriteArrayList<>();
    private final Consumer<Frame> answer;

    LineLog() {
        this(frame -> {});
    }

    /** Does something with each frame, too. */
    LineLog(Consumer<Frame> answer) {
        this.answer = answer;
    }

    @Override
    public void opened(String where) {
        events.add("opened " + where);
    }

    @Override
    public void frame(Frame frame, long nowNanos) {
        times.add(nowNanos);
        frames.add(frame);
        answer.accept(frame);
    }

    @Override
    public void counts(ParserCounts newest) {
        counts.add(newest);
    }

    @Override
    public void garbled(String sentence) {
        events.add("garbled " + sentence);
    }

    @Override
    public void lost(String sentence) {
        events.add("lost " + sentence);
    }

    @Override
    public void failed(String sentence) {
        events.add("failed " + sentence);
    }

    List<String> events() {
        return events;
    }

    List<Frame> frames() {
        return frames;
    }

    List<Long> times() {
        return times;
    }

    ParserCounts latestCounts() {
        return counts.isEmpty() ? ParserCounts.NONE : counts.get(counts.size() - 1);
    }

    /** Waits until an event starts so and gives it back. */
    String await(String start) {
        return await(start, 1);
    }

    /** Waits until {@code count} events start so and gives the last of them back. */
    String await(String start, int count) {
        Awaitility.await("event \"" + start + "\" number " + count)
                .atMost(PATIENCE)
                .pollInterval(Duration.ofMillis(2))
                .until(() -> matching(start).size() >= count);
        return matching(start).get(count - 1);
    }

    /** Waits for that many frames. */
    void awaitFrames(int count) {
        Awaitility.await(count + " frames")
                .atMost(PATIENCE)
                .pollInterval(Duration.ofMillis(1))
                .until(() -> frames.size() >= count);
    }

    private List<String> matching(String start) {
        return events.stream().filter(event -> event.startsWith(start)).toList();
    }
}
