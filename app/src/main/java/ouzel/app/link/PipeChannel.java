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
import java.net.SocketAddress;

/**
 * One end of a line inside this program, as a Netty channel: what is written goes over a {@link Wire} to the
 * other end. It is active as soon as it is registered.
 *
 * <p>Thread: link; both ends on the same loop.
 */
final class PipeChannel extends AbstractChannel {
    private static final ChannelMetadata METADATA = new ChannelMetadata(false);

    private final ChannelConfig config = new DefaultChannelConfig(this);
    private final LinkLoop loop;
    private final Wire wire;
    private PipeChannel farEnd;
    /** Changed on the loop; volatile because the contract of a channel lets every thread ask. */
    private volatile boolean isOpen = true;

    PipeChannel(LinkLoop loop, Wire wire) {
        super(null);
        this.loop = loop;
        this.wire = wire;
    }

    /** Makes the two ends one pipe, before either is registered. */
    void join(PipeChannel other) {
        farEnd = other;
        other.farEnd = this;
    }

    /** True if the other end has closed. */
    boolean isCutOff() {
        return !farEnd.isOpen;
    }

    /** Later and not at once, so that two ends that answer each other do not nest. */
    private void arrive(byte[] bytes) {
        loop.execute(() -> {
            if (isOpen) {
                pipeline().fireChannelRead(Unpooled.wrappedBuffer(bytes));
                pipeline().fireChannelReadComplete();
            }
        });
    }

    @Override
    protected void doWrite(ChannelOutboundBuffer waiting) {
        for (Object message = waiting.current(); message != null; message = waiting.current()) {
            byte[] bytes = ByteBufUtil.getBytes((ByteBuf) message);
            waiting.remove();
            wire.carry(bytes, farEnd::arrive);
        }
    }

    @Override
    protected void doClose() {
        isOpen = false;
        if (farEnd.isOpen && farEnd.isRegistered()) {
            farEnd.close();
        }
    }

    @Override
    protected AbstractUnsafe newUnsafe() {
        return new PipeUnsafe();
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
        return new LocalAddress("inside this program");
    }

    @Override
    protected void doBind(SocketAddress localAddress) {
        throw new UnsupportedOperationException("A line inside this program has no address to bind.");
    }

    @Override
    protected void doDisconnect() {
        doClose();
    }

    @Override
    protected void doBeginRead() {
        // Nothing to begin: what arrives is given on as it comes.
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
        return isOpen;
    }

    @Override
    public boolean isActive() {
        return isOpen;
    }

    private final class PipeUnsafe extends AbstractUnsafe {
        @Override
        public void connect(SocketAddress remoteAddress, SocketAddress localAddress, ChannelPromise promise) {
            promise.tryFailure(new UnsupportedOperationException("A line inside this program is born connected."));
        }
    }
}
