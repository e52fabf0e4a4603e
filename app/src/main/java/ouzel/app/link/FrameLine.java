package ouzel.app.link;

import io.netty.bootstrap.Bootstrap;
import io.netty.channel.Channel;
import io.netty.channel.ChannelFactory;
import io.netty.channel.ChannelFuture;
import io.netty.channel.ChannelInitializer;
import io.netty.channel.ChannelOption;
import io.netty.channel.local.LocalAddress;
import io.netty.channel.socket.nio.NioSocketChannel;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.net.UnknownHostException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.atomic.AtomicLong;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.netty.FrameDecoder;
import ouzel.protocol.netty.FrameEncoderHandler;

/**
 * One connection that carries frames, over whatever kind of channel. It is opened once and ends once.
 *
 * <pre>
 *   channel --bytes--&gt; FrameDecoder --frames--&gt; LineEnd ----&gt; LineListener
 *   channel &lt;--bytes-- FrameEncoderHandler &lt;--frames-- SendQueue &lt;---- send, sendUrgent
 * </pre>
 *
 * <p>Thread: any; everything is done on the link thread.
 */
public final class FrameLine implements Line {
    /** How long a far end may take to answer, ms. */
    static final int CONNECT_LIMIT_MILLIS = 3_000;

    private final LinkLoop loop;
    private final LineKind kind;
    private final String where;
    private final LineListener listener;
    private final FrameDecoder decoder = new FrameDecoder();
    private final LineEnd end;
    private final AtomicLong dropped;
    private final SendQueue queue;
    private final CompletableFuture<Void> finished = new CompletableFuture<>();
    /** Null until there is one. */
    private Channel channel;

    private boolean hasDisturbedDevice;

    private FrameLine(LinkLoop loop, LineKind kind, String where, LineListener listener, AtomicLong dropped) {
        this.loop = loop;
        this.kind = kind;
        this.where = where;
        this.listener = listener;
        this.end = new LineEnd(where, listener, decoder::counts, loop::nowNanos);
        this.queue = new SendQueue(where, dropped);
        this.dropped = dropped;
    }

    /** Opens a line to {@code port}; the listener is told how that went. */
    public static FrameLine connect(LinkLoop loop, Port port, LineListener listener) {
        return connect(loop, port, listener, new AtomicLong());
    }

    /** The same, with the frames that never left added to {@code dropped}. */
    static FrameLine connect(LinkLoop loop, Port port, LineListener listener, AtomicLong dropped) {
        FrameLine line = new FrameLine(loop, port.kind(), port.where(), listener, dropped);
        if (port instanceof Port.Serial serial) {
            loop.execute(() -> line.open(() -> new SerialChannel(serial), new LocalAddress(serial.where())));
        } else if (port instanceof Port.Tcp tcp) {
            line.resolveAndOpen(tcp);
        } else {
            throw new IllegalArgumentException("port : " + port.where() + " (expected: one place, not a search)");
        }
        return line;
    }

    /**
     * Takes over a connection that somebody else opened to this program. Thread: link.
     *
     * @param dropped counts the frames that never left
     */
    static FrameLine accepted(LinkLoop loop, Channel channel, String where, LineListener listener, AtomicLong dropped) {
        FrameLine line = new FrameLine(loop, LineKind.TCP, where, listener, dropped);
        line.equip(channel);
        return line;
    }

    /** Asking for the address of a name can take seconds, so it is not done on the loop. */
    private void resolveAndOpen(Port.Tcp port) {
        Runnable work = () -> {
            try {
                InetSocketAddress address = new InetSocketAddress(InetAddress.getByName(port.host()), port.port());
                loop.execute(() -> open(NioSocketChannel::new, address));
            } catch (UnknownHostException unknown) {
                loop.execute(() -> failed(unknown));
            }
        };
        DaemonThreads.named("ouzel address " + port.host(), work).start();
    }

    private void open(ChannelFactory<Channel> factory, SocketAddress address) {
        if (end.isMuted()) {
            return;
        }
        Bootstrap bootstrap = new Bootstrap()
                .group(loop.eventLoop())
                .channelFactory(factory)
                .disableResolver()
                .option(ChannelOption.CONNECT_TIMEOUT_MILLIS, CONNECT_LIMIT_MILLIS)
                .handler(new ChannelInitializer<>() {
                    @Override
                    protected void initChannel(Channel created) {
                        equip(created);
                    }
                });
        bootstrap.connect(address).addListener((ChannelFuture connected) -> {
            if (!connected.isSuccess()) {
                failed(connected.cause());
            }
        });
    }

    private void equip(Channel created) {
        channel = created;
        loop.add(created);
        queue.attach(created);
        created.pipeline().addLast(decoder, new FrameEncoderHandler(), end);
        created.closeFuture().addListener(closed -> {
            queue.clear();
            finished.complete(null);
        });
    }

    private void failed(Throwable cause) {
        hasDisturbedDevice = cause instanceof LineFailure failure && failure.kind() == LineFailure.Cause.NOT_SUITABLE;
        finished.complete(null);
        if (!end.isMuted()) {
            listener.failed(ConnectTrouble.ofOpening(where, cause));
        }
    }

    /** True if opening failed only after the device had been opened, which some controllers notice. Thread: link. */
    boolean hasDisturbedDevice() {
        return hasDisturbedDevice;
    }

    @Override
    public LineKind kind() {
        return kind;
    }

    @Override
    public void send(Frame frame) {
        loop.run(() -> queue.send(frame));
    }

    @Override
    public void sendUrgent(Frame frame) {
        loop.run(() -> queue.sendUrgent(frame));
    }

    @Override
    public long dropped() {
        return dropped.get();
    }

    @Override
    public CompletionStage<Void> close() {
        loop.run(() -> {
            end.mute();
            if (channel == null) {
                finished.complete(null);
            } else {
                channel.close();
            }
        });
        return finished;
    }

    /** One end of a line inside this program, without a channel yet. */
    static FrameLine inProcess(LinkLoop loop, String where, LineListener listener) {
        return new FrameLine(loop, LineKind.IN_PROCESS, where, listener, new AtomicLong());
    }

    /** Gives the line its channel and opens it, for a moment only if either end was closed before. Thread: link. */
    void start(PipeChannel pipe) {
        equip(pipe);
        loop.eventLoop().register(pipe);
        if (end.isMuted() || pipe.isCutOff()) {
            pipe.close();
        }
    }
}
