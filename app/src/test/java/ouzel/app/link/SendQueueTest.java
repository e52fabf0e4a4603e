package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;

import io.netty.channel.ChannelHandlerContext;
import io.netty.channel.ChannelOutboundHandlerAdapter;
import io.netty.channel.ChannelPromise;
import io.netty.channel.embedded.EmbeddedChannel;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import ouzel.protocol.frame.Frame;

class SendQueueTest {
    private final SlowPort port = new SlowPort();
    private final EmbeddedChannel channel = new EmbeddedChannel(port);
    private final AtomicLong dropped = new AtomicLong();
    private final SendQueue queue = new SendQueue("the far end", dropped);

    @BeforeEach
    void attach() {
        channel.freezeTime();
        queue.attach(channel);
    }

    @AfterEach
    void nothingIsLeftOver() {
        channel.finishAndReleaseAll();
    }

    @Test
    void writesOneFrameAtATimeInTurn() {
        queue.send(Frames.numbered(1));
        queue.send(Frames.numbered(2));
        queue.send(Frames.numbered(3));
        assertThat(port.written()).containsExactly(1);

        port.take();
        port.take();

        assertThat(port.written()).containsExactly(1, 2, 3);
    }

    @Test
    void anUrgentFrameOvertakesAllThatWait() {
        queue.send(Frames.numbered(1));
        queue.send(Frames.numbered(2));
        queue.send(Frames.numbered(3));
        queue.sendUrgent(Frames.numbered(99));

        port.take();

        assertThat(port.written()).containsExactly(1, 99);
    }

    @Test
    void dropsTheOldestAndCountsItWhenFull() {
        for (int i = 0; i <= SendQueue.CAPACITY + 3; i++) {
            queue.send(Frames.numbered(i));
        }

        port.take();

        assertThat(dropped).hasValue(3);
        assertThat(port.written()).containsExactly(0, 4);
    }

    @Test
    void urgentFramesDoNotPileUpEither() {
        for (int i = 0; i <= SendQueue.URGENT_CAPACITY + 2; i++) {
            queue.sendUrgent(Frames.numbered(i));
        }

        assertThat(dropped).hasValue(2);
    }

    @Test
    void sendsALongRunThroughAPortThatTakesAllAtOnce() {
        port.takesAtOnce = true;

        for (int i = 0; i < 100_000; i++) {
            queue.send(Frames.numbered(i & 0xFFFF));
        }

        assertThat(port.written()).hasSize(100_000);
        assertThat(dropped).hasValue(0);
    }

    @Test
    void aFarEndThatStopsTakingBytesIsGivenUpAfterOneSecond() {
        queue.send(Frames.numbered(1));

        advance(SendQueue.STALL_LIMIT_MILLIS - 1);
        assertThat(channel.isOpen()).isTrue();
        advance(1);

        assertThat(channel.isOpen()).isFalse();
        assertThat(port.complaint).isInstanceOf(LineFailure.class).hasMessageContaining("has taken no bytes for 1.0 s");
    }

    @Test
    void aFrameTakenInTimeLeavesNoWatchdogBehind() {
        queue.send(Frames.numbered(1));
        advance(SendQueue.STALL_LIMIT_MILLIS - 1);
        port.take();

        advance(10 * SendQueue.STALL_LIMIT_MILLIS);

        assertThat(channel.isOpen()).isTrue();
        assertThat(port.complaint).isNull();
    }

    @Test
    void countsWhatNeverLeftWhenTheChannelCloses() {
        queue.send(Frames.numbered(1));
        queue.send(Frames.numbered(2));
        queue.sendUrgent(Frames.numbered(3));
        channel.close();
        port.fail();
        queue.clear();

        queue.send(Frames.numbered(4));

        assertThat(dropped).hasValue(4);
    }

    @Test
    void dropsWhatIsSentBeforeThereIsAChannel() {
        SendQueue early = new SendQueue("nowhere", dropped);

        early.send(Frames.numbered(1));

        assertThat(dropped).hasValue(1);
    }

    private void advance(long millis) {
        channel.advanceTimeBy(millis, TimeUnit.MILLISECONDS);
        channel.runScheduledPendingTasks();
        channel.runPendingTasks();
    }

    /** Takes a frame only when it is told to. */
    private static final class SlowPort extends ChannelOutboundHandlerAdapter {
        private final List<Integer> sequences = new ArrayList<>();
        private ChannelPromise underWay;
        private Throwable complaint;
        private boolean takesAtOnce;

        @Override
        public void write(ChannelHandlerContext context, Object message, ChannelPromise promise) {
            sequences.add(((Frame) message).header().sequence());
            if (takesAtOnce) {
                promise.setSuccess();
            } else {
                underWay = promise;
            }
        }

        @Override
        @SuppressWarnings(
                "deprecation") // Deprecated for outbound handlers, inherited from the common parent all the same.
        public void exceptionCaught(ChannelHandlerContext context, Throwable cause) {
            complaint = cause;
        }

        void take() {
            underWay.setSuccess();
        }

        void fail() {
            underWay.setFailure(new LineFailure(LineFailure.Cause.LOST, "closed"));
        }

        List<Integer> written() {
            return sequences;
        }
    }
}
