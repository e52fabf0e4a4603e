package ouzel.app.link;

import io.netty.channel.Channel;
import io.netty.channel.ChannelFuture;
import io.netty.util.concurrent.Future;
import java.util.ArrayDeque;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import ouzel.app.link.LineFailure.Cause;
import ouzel.protocol.frame.Frame;

/**
 * The frames that wait for a channel. One is under way at a time, so that an urgent frame waits for one other at most;
 * what the system's own buffer has taken is beyond recall.
 *
 * <p>A far end that takes nothing for {@value #STALL_LIMIT_MILLIS} ms has stopped reading: the channel is told so as an
 * exception whose message is a sentence, and closed.
 *
 * <p>Thread: link.
 */
final class SendQueue {
    /** Frames that may wait in turn: at 57 600 baud the longest take 0.7 s to leave. */
    static final int CAPACITY = 16;
    /** Urgent frames that may wait; they are repeated until confirmed, so the oldest is no loss. */
    static final int URGENT_CAPACITY = 4;
    /** How long a write may be under way, ms: three times the longest frame at 9 600 baud. */
    static final long STALL_LIMIT_MILLIS = 1_000;

    private final String where;
    private final Queue<Frame> urgent = new ArrayDeque<>(URGENT_CAPACITY);
    private final Queue<Frame> waiting = new ArrayDeque<>(CAPACITY);
    private final AtomicLong dropped;
    /** Null until {@link #attach}. */
    private Channel channel;

    private boolean isUnderWay;
    private boolean isSending;

    /**
     * A queue that leads nowhere yet, and drops what it is given.
     *
     * @param dropped counts the frames that never left, because the queue was full or the channel closed
     */
    SendQueue(String where, AtomicLong dropped) {
        this.where = where;
        this.dropped = dropped;
    }

    /** Sends through {@code channel} from the moment it is active. */
    void attach(Channel channel) {
        this.channel = channel;
    }

    void send(Frame frame) {
        offer(waiting, CAPACITY, frame);
    }

    void sendUrgent(Frame frame) {
        offer(urgent, URGENT_CAPACITY, frame);
    }

    /** Drops all that waits: the channel has closed. */
    void clear() {
        dropped.addAndGet(urgent.size() + waiting.size());
        urgent.clear();
        waiting.clear();
    }

    private void offer(Queue<Frame> queue, int capacity, Frame frame) {
        if (channel == null || !channel.isActive()) {
            dropped.incrementAndGet();
            return;
        }
        if (queue.size() == capacity) {
            queue.remove();
            dropped.incrementAndGet();
        }
        queue.add(frame);
        sendNext();
    }

    /** A loop and not a recursion: a socket often takes a frame before {@code writeAndFlush} returns. */
    private void sendNext() {
        if (isSending) {
            return;
        }
        isSending = true;
        while (!isUnderWay && channel.isActive()) {
            Optional<Frame> next = next();
            if (next.isEmpty()) {
                break;
            }
            write(next.get());
        }
        isSending = false;
    }

    private Optional<Frame> next() {
        return Optional.ofNullable(urgent.isEmpty() ? waiting.poll() : urgent.poll());
    }

    private void write(Frame frame) {
        isUnderWay = true;
        ChannelFuture write = channel.writeAndFlush(frame);
        if (!write.isDone()) {
            watch(write);
        }
        write.addListener(this::written);
    }

    private void written(Future<? super Void> write) {
        isUnderWay = false;
        if (!write.isSuccess()) {
            dropped.incrementAndGet();
        }
        sendNext();
    }

    private void watch(ChannelFuture write) {
        Future<?> watchdog =
                channel.eventLoop().schedule(() -> stalled(write), STALL_LIMIT_MILLIS, TimeUnit.MILLISECONDS);
        write.addListener(taken -> watchdog.cancel(false));
    }

    private void stalled(ChannelFuture write) {
        if (!write.isDone()) {
            channel.pipeline()
                    .fireExceptionCaught(new LineFailure(
                            Cause.LOST,
                            "The far end at " + where + " has taken no bytes for " + STALL_LIMIT_MILLIS / 1_000.0
                                    + " s. Check that it still runs."));
            channel.close();
        }
    }
}
