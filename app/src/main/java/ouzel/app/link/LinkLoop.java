package ouzel.app.link;

import io.netty.channel.Channel;
import io.netty.channel.EventLoop;
import io.netty.channel.MultiThreadIoEventLoopGroup;
import io.netty.channel.group.ChannelGroup;
import io.netty.channel.group.DefaultChannelGroup;
import io.netty.channel.nio.NioIoHandler;
import io.netty.util.concurrent.Future;
import java.time.Duration;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The link thread: one event loop on which all lines live, and whatever must happen in one order with them.
 *
 * <p>Work given to it runs in turn and must not wait for anything. An exception in it is a fault of this program; it is
 * logged and the loop goes on.
 *
 * <p>Thread: any, but for {@link #close}, which waits and must not be called on the loop.
 */
public final class LinkLoop implements Executor, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(LinkLoop.class);
    private static final long CLOSE_LIMIT_MILLIS = 3_500;
    /** Time for what the closed channels still want to say, ms. */
    private static final long QUIET_MILLIS = 50;

    private static final long LAST_TASKS_MILLIS = 1_000;

    private final MultiThreadIoEventLoopGroup group;
    private final EventLoop loop;
    private final ChannelGroup channels;
    private final LongSupplier clock;

    /** Starts the thread. */
    public LinkLoop() {
        this(System::nanoTime);
    }

    /** Starts the thread; what it tells as the time is {@code clock}'s, ns. */
    LinkLoop(LongSupplier clock) {
        this.clock = clock;
        group = new MultiThreadIoEventLoopGroup(
                1, (Runnable work) -> DaemonThreads.named("ouzel link", work), NioIoHandler.newFactory());
        loop = group.next();
        channels = new DefaultChannelGroup("ouzel lines", loop, true);
    }

    /** Now, on the monotonic clock of {@link System#nanoTime}; every time that a line tells is on it. */
    public long nowNanos() {
        return clock.getAsLong();
    }

    /** True on the link thread. */
    public boolean isHere() {
        return loop.inEventLoop();
    }

    /** Runs {@code work} on the link thread, later; not at all once the loop is closed. */
    @Override
    public void execute(Runnable work) {
        try {
            logFault(loop.submit(work));
        } catch (RejectedExecutionException closed) {
            LOG.debug("The link thread has ended; work for it is left out.");
        }
    }

    /** Runs {@code work} on the link thread: at once if this is it, later if not. */
    void run(Runnable work) {
        if (isHere()) {
            work.run();
        } else {
            execute(work);
        }
    }

    /** Runs {@code work} once, {@code delay} from now. */
    public Appointment after(Duration delay, Runnable work) {
        Future<?> planned = loop.schedule(work, delay.toNanos(), TimeUnit.NANOSECONDS);
        logFault(planned);
        return () -> planned.cancel(false);
    }

    /** Runs {@code work} again and again, each time {@code pause} after the last; a fault in it ends only that turn. */
    public Appointment every(Duration pause, Runnable work) {
        Rounds rounds = new Rounds(pause, work);
        execute(rounds);
        return rounds;
    }

    /**
     * Closes every line, gives the ports back and ends the thread. Idempotent; takes less than five seconds, whatever
     * the ports do.
     */
    @Override
    public void close() {
        if (isHere()) {
            throw new IllegalStateException("thread : link (expected: any other, because closing waits for it)");
        }
        channels.close().awaitUninterruptibly(CLOSE_LIMIT_MILLIS);
        group.shutdownGracefully(QUIET_MILLIS, LAST_TASKS_MILLIS, TimeUnit.MILLISECONDS)
                .awaitUninterruptibly(LAST_TASKS_MILLIS);
    }

    EventLoop eventLoop() {
        return loop;
    }

    /** Takes care that {@code channel} is closed before the thread ends; at once if that is happening. */
    void add(Channel channel) {
        channels.add(channel);
    }

    private static void logFault(Future<?> work) {
        work.addListener(done -> {
            if (!done.isSuccess() && !done.isCancelled()) {
                LOG.error("A fault of this program on the link thread", done.cause());
            }
        });
    }

    /** Something that is going to run on the link thread. */
    @FunctionalInterface
    public interface Appointment {
        /** Calls it off; a run that has begun ends. Idempotent, any thread. */
        void cancel();
    }

    /** The next turn is planned before this one runs, so that a fault cannot end the rounds. */
    private final class Rounds implements Runnable, Appointment {
        private final Duration pause;
        private final Runnable work;
        private Appointment next = () -> {};
        private boolean isOver;

        Rounds(Duration pause, Runnable work) {
            this.pause = pause;
            this.work = work;
        }

        @Override
        public void run() {
            if (!isOver && !loop.isShuttingDown()) {
                next = after(pause, this);
                work.run();
            }
        }

        @Override
        public void cancel() {
            LinkLoop.this.run(() -> {
                isOver = true;
                next.cancel();
            });
        }
    }
}
