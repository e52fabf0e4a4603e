package ouzel.app.link;

import io.netty.buffer.ByteBuf;
import io.netty.buffer.ByteBufUtil;
import io.netty.buffer.Unpooled;
import io.netty.channel.AbstractChannel;
import io.netty.channel.ChannelConfig;
import io.netty.channel.ChannelMetadata;
import io.netty.channel.ChannelOutboundBuffer;
import io.netty.channel.ChannelPromise;
import io.netty.channel.DefaultChannelConfig;
import io.netty.channel.EventLoop;
import io.netty.channel.local.LocalAddress;
import java.io.IOException;
import java.net.SocketAddress;
import java.nio.channels.AlreadyConnectedException;
import java.nio.channels.ClosedChannelException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * A serial line as a Netty channel on any event loop, beside the sockets there. The loop itself never touches the port:
 *
 * <pre>
 *   event loop ---- bytes of one write ----&gt; output thread: opens, writes ----+
 *        ^  ^------ taken, or failed -------------'                           |  port
 *        '--------- bytes, or gone --------- input thread: reads -------------+
 *   closing: a thread of its own, because a stuck write ends only when somebody else closes the port
 * </pre>
 *
 * <p>One write is under way at a time, and one chunk of input: the input thread reads on only when the pipeline has
 * asked for more, so that a flood stays in the system's buffer and not in the heap.
 *
 * <p>A line that is gone is told as an exception whose message is a sentence, then the channel closes. Closing
 * completes when the system has the port back, or after {@value #CLOSE_LIMIT_MILLIS} ms at each of the things it
 * waits for.
 *
 * <p>Thread: link, but for what is named above. The channel and its device serve one connection; for the next, make new
 * ones.
 */
final class SerialChannel extends AbstractChannel {
    private static final ChannelMetadata METADATA = new ChannelMetadata(false);
    private static final long CLOSE_LIMIT_MILLIS = 1_000;

    private enum State {
        NEW,
        OPENING,
        ACTIVE,
        CLOSED
    }

    private final ChannelConfig config = new DefaultChannelConfig(this);
    private final Port.Serial line;
    private final SerialDevice device;
    private final ExecutorService output;
    private final Thread input;
    private final Semaphore demand = new Semaphore(0);
    /** Changed on the loop; volatile because the contract of a channel lets every thread ask. */
    private volatile State state = State.NEW;

    private boolean isWriting;

    SerialChannel(Port.Serial line) {
        super(null);
        this.line = line;
        this.device = new SerialDevice(line.name(), line.baud(), line.holdsControlLinesLow());
        this.output = Executors.newSingleThreadExecutor(
                work -> DaemonThreads.named("ouzel serial output " + line.name(), work));
        this.input = DaemonThreads.named("ouzel serial input " + line.name(), this::readUntilClosed);
    }

    private void openOnOutputThread(ChannelPromise promise) {
        try {
            device.open();
            onLoop(() -> becomeActive(promise));
        } catch (IOException failure) {
            onLoop(() -> {
                promise.tryFailure(failure);
                unsafe().close(voidPromise());
            });
        }
    }

    private void becomeActive(ChannelPromise promise) {
        if (state != State.OPENING) {
            promise.tryFailure(new ClosedChannelException());
            return;
        }
        state = State.ACTIVE;
        input.start();
        promise.trySuccess();
        pipeline().fireChannelActive();
    }

    private void readUntilClosed() {
        try {
            while (state == State.ACTIVE) {
                demand.acquire();
                byte[] bytes = device.awaitBytes();
                onLoop(() -> arrived(bytes));
            }
        } catch (IOException gone) {
            onLoop(() -> lost(gone));
        } catch (InterruptedException closing) {
            // Only closing interrupts this thread, and it ends here.
            Thread.currentThread().interrupt();
        }
    }

    private void arrived(byte[] bytes) {
        if (state == State.ACTIVE) {
            pipeline().fireChannelRead(Unpooled.wrappedBuffer(bytes));
            pipeline().fireChannelReadComplete();
        }
    }

    private void lost(IOException gone) {
        if (state == State.ACTIVE) {
            pipeline().fireExceptionCaught(gone);
            unsafe().close(voidPromise());
        }
    }

    @Override
    protected void doBeginRead() {
        if (demand.availablePermits() == 0) {
            demand.release();
        }
    }

    @Override
    protected void doWrite(ChannelOutboundBuffer waiting) {
        Object message = waiting.current();
        if (!isWriting && message != null) {
            isWriting = true;
            byte[] bytes = ByteBufUtil.getBytes((ByteBuf) message);
            output.execute(() -> writeOnOutputThread(bytes));
        }
    }

    private void writeOnOutputThread(byte[] bytes) {
        try {
            device.write(bytes);
            onLoop(this::written);
        } catch (IOException gone) {
            onLoop(() -> lost(gone));
        }
    }

    private void written() {
        isWriting = false;
        ChannelOutboundBuffer waiting = unsafe().outboundBuffer();
        if (waiting != null) {
            waiting.remove();
            ((SerialUnsafe) unsafe()).flushNext();
        }
    }

    private void onLoop(Runnable work) {
        try {
            eventLoop().execute(work);
        } catch (RejectedExecutionException loopHasEnded) {
            // The program is closing and nobody is left to tell; give the port back.
            device.close();
        }
    }

    @Override
    protected void doClose() throws InterruptedException {
        state = State.CLOSED;
        demand.release();
        Thread closing = DaemonThreads.named("ouzel serial release " + line.name(), device::close);
        closing.start();
        closing.join(CLOSE_LIMIT_MILLIS);
        output.shutdownNow();
        output.awaitTermination(CLOSE_LIMIT_MILLIS, TimeUnit.MILLISECONDS);
        input.interrupt();
        input.join(CLOSE_LIMIT_MILLIS);
    }

    @Override
    protected Object filterOutboundMessage(Object message) {
        if (message instanceof ByteBuf) {
            return message;
        }
        throw new UnsupportedOperationException("message : " + message.getClass() + " (expected: ByteBuf)");
    }

    @Override
    protected AbstractUnsafe newUnsafe() {
        return new SerialUnsafe();
    }

    @Override
    protected boolean isCompatible(EventLoop loop) {
        return true;
    }

    @Override
    protected SocketAddress localAddress0() {
        return null;
    }

    @Override
    protected SocketAddress remoteAddress0() {
        return new LocalAddress(line.where());
    }

    @Override
    protected void doBind(SocketAddress localAddress) {
        throw new UnsupportedOperationException("A serial line has no address of its own to bind.");
    }

    @Override
    protected void doDisconnect() throws InterruptedException {
        doClose();
    }

    @Override
    public ChannelConfig config() {
        return config;
    }

    @Override
    public ChannelMetadata metadata() {
        return METADATA;
    }

    @Override
    public boolean isOpen() {
        return state != State.CLOSED;
    }

    @Override
    public boolean isActive() {
        return state == State.ACTIVE;
    }

    private final class SerialUnsafe extends AbstractUnsafe {
        @Override
        public void connect(SocketAddress remoteAddress, SocketAddress localAddress, ChannelPromise promise) {
            if (!promise.setUncancellable() || !ensureOpen(promise)) {
                return;
            }
            if (state != State.NEW) {
                promise.tryFailure(new AlreadyConnectedException());
                return;
            }
            state = State.OPENING;
            output.execute(() -> openOnOutputThread(promise));
        }

        void flushNext() {
            flush0();
        }

        @Override
        protected Executor prepareToClose() {
            state = State.CLOSED;
            return work -> DaemonThreads.named("ouzel serial close " + line.name(), work)
                    .start();
        }
    }
}
