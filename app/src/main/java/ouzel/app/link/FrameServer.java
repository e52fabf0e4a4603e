package ouzel.app.link;

import io.netty.bootstrap.ServerBootstrap;
import io.netty.channel.Channel;
import io.netty.channel.ChannelFuture;
import io.netty.channel.ChannelInitializer;
import io.netty.channel.ChannelOption;
import io.netty.channel.socket.nio.NioServerSocketChannel;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.atomic.AtomicLong;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.ParserCounts;

/**
 * The payload's end of a network line: waits on a port for a console and speaks with one at a time.
 *
 * <p>A second console is turned away while the first still speaks. If the first has been silent for
 * {@value #SILENCE_SECONDS} s, as one is whose computer went down without a farewell, the second takes its place.
 *
 * <p>The listener hears {@link LineListener#opened} and {@link LineListener#lost} for each console in turn.
 *
 * <p>Thread: any; everything is done on the link thread.
 */
public final class FrameServer implements Line {
    private static final int SILENCE_SECONDS = 5;
    private static final long SILENCE_NANOS = SILENCE_SECONDS * 1_000_000_000L;

    private final LinkLoop loop;
    private final LineListener listener;
    private final AtomicLong dropped = new AtomicLong();
    private final CompletableFuture<Integer> boundPort = new CompletableFuture<>();
    private final CompletableFuture<Void> finished = new CompletableFuture<>();
    private Optional<Guest> guest = Optional.empty();
    private Channel server;
    private boolean isClosed;

    private FrameServer(LinkLoop loop, LineListener listener) {
        this.loop = loop;
        this.listener = listener;
    }

    /**
     * Waits for consoles on this computer only.
     *
     * @param port 1 to 65 535, or 0 for any free one
     */
    public static FrameServer onThisComputer(LinkLoop loop, int port, LineListener listener) {
        return listen(loop, new InetSocketAddress(InetAddress.getLoopbackAddress(), port), listener);
    }

    /**
     * Waits for consoles anywhere in the network.
     *
     * @param port 1 to 65 535, or 0 for any free one
     */
    public static FrameServer onAllNetworks(LinkLoop loop, int port, LineListener listener) {
        return listen(loop, new InetSocketAddress(port), listener);
    }

    private static FrameServer listen(LinkLoop loop, InetSocketAddress address, LineListener listener) {
        FrameServer made = new FrameServer(loop, listener);
        loop.execute(() -> made.bind(address));
        return made;
    }

    private void bind(InetSocketAddress address) {
        ChannelFuture bound = new ServerBootstrap()
                .group(loop.eventLoop())
                .channel(NioServerSocketChannel.class)
                .childOption(ChannelOption.SO_KEEPALIVE, true)
                .childHandler(new ChannelInitializer<>() {
                    @Override
                    protected void initChannel(Channel created) {
                        receive(created);
                    }
                })
                .bind(address);
        server = bound.channel();
        loop.add(server);
        server.closeFuture().addListener(closed -> finished.complete(null));
        bound.addListener(done -> told(bound, address));
        if (isClosed) {
            server.close();
        }
    }

    private void told(ChannelFuture bound, InetSocketAddress address) {
        if (bound.isSuccess()) {
            boundPort.complete(((InetSocketAddress) server.localAddress()).getPort());
            return;
        }
        String sentence = ConnectTrouble.ofListening(text(address), bound.cause());
        boundPort.completeExceptionally(new LineFailure(LineFailure.Cause.IN_USE, sentence, bound.cause()));
        if (!isClosed) {
            listener.failed(sentence);
        }
    }

    private void receive(Channel created) {
        String where = text((InetSocketAddress) created.remoteAddress());
        if (guest.isPresent() && loop.nowNanos() - guest.get().lastHeardNanos < SILENCE_NANOS) {
            created.close();
            listener.failed("A second console at " + where + " was turned away: the one at " + guest.get().where
                    + " is connected. Close that one first.");
            return;
        }
        guest.ifPresent(Guest::replace);
        Guest arrival = new Guest(where);
        guest = Optional.of(arrival);
        arrival.line = FrameLine.accepted(loop, created, where, arrival, dropped);
    }

    private static String text(InetSocketAddress address) {
        return address.getHostString() + ":" + address.getPort();
    }

    /** The port consoles connect to; fails if it could not be had. Completes on the link thread. */
    public CompletionStage<Integer> boundPort() {
        return boundPort;
    }

    @Override
    public LineKind kind() {
        return LineKind.TCP;
    }

    @Override
    public void send(Frame frame) {
        loop.run(() -> guest.ifPresentOrElse(present -> present.line.send(frame), dropped::incrementAndGet));
    }

    @Override
    public void sendUrgent(Frame frame) {
        loop.run(() -> guest.ifPresentOrElse(present -> present.line.sendUrgent(frame), dropped::incrementAndGet));
    }

    @Override
    public long dropped() {
        return dropped.get();
    }

    @Override
    public CompletionStage<Void> close() {
        loop.run(() -> {
            isClosed = true;
            guest.ifPresent(present -> present.line.close());
            guest = Optional.empty();
            if (server != null) {
                server.close();
            }
        });
        return finished;
    }

    /** The console that is connected. */
    private final class Guest implements LineListener {
        private final String where;
        private long lastHeardNanos = loop.nowNanos();
        private FrameLine line;

        Guest(String where) {
            this.where = where;
        }

        void replace() {
            line.close();
            listener.lost("The console at " + where + " has been silent for " + SILENCE_SECONDS
                    + " s; another one takes its place.");
        }

        @Override
        public void opened(String place) {
            listener.opened(place);
        }

        @Override
        public void frame(Frame frame, long nowNanos) {
            lastHeardNanos = nowNanos;
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
            guest = Optional.empty();
            listener.lost(sentence);
        }

        @Override
        public void failed(String sentence) {
            listener.failed(sentence);
        }
    }
}
