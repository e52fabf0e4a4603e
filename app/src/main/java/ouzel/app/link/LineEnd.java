package ouzel.app.link;

import io.netty.channel.ChannelHandlerContext;
import io.netty.channel.SimpleChannelInboundHandler;
import java.io.IOException;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.ParserCounts;

/**
 * The last handler of every pipeline: turns what happens to the channel into calls of a {@link LineListener}.
 *
 * <p>An {@link IOException} ends the connection and its message becomes the reason. Any other exception is a fault
 * of this program: it is logged, and the connection stays, because it may be all that can still stop a sampler.
 *
 * <p>Thread: link.
 */
final class LineEnd extends SimpleChannelInboundHandler<Frame> {
    private static final Logger LOG = LoggerFactory.getLogger(LineEnd.class);

    private final String where;
    private final LineListener listener;
    private final Supplier<ParserCounts> counter;
    private final LongSupplier clock;
    /** Null until the channel is active. */
    private GarbleWatch garble;

    private ParserCounts told;
    private String reason;
    private boolean isMuted;

    /**
     * Ends one pipeline.
     *
     * @param where the far end, in a few words
     * @param counter the frame decoder's counts
     * @param clock monotonic, ns
     */
    LineEnd(String where, LineListener listener, Supplier<ParserCounts> counter, LongSupplier clock) {
        this.where = where;
        this.listener = listener;
        this.counter = counter;
        this.clock = clock;
        this.told = counter.get();
        this.reason = "The connection to " + where
                + " was closed by the far end. It was stopped, or is busy with another one.";
    }

    /** From now on nothing is told any more: the owner closes the line. */
    void mute() {
        isMuted = true;
    }

    boolean isMuted() {
        return isMuted;
    }

    @Override
    public void channelActive(ChannelHandlerContext context) {
        garble = new GarbleWatch(clock.getAsLong());
        if (!isMuted) {
            listener.opened(where);
        }
    }

    @Override
    protected void channelRead0(ChannelHandlerContext context, Frame frame) {
        if (!isMuted) {
            listener.frame(frame, clock.getAsLong());
        }
    }

    @Override
    public void channelReadComplete(ChannelHandlerContext context) {
        ParserCounts counts = counter.get();
        if (!isMuted && !counts.equals(told)) {
            told = counts;
            listener.counts(counts);
        }
        if (!isMuted && garble.turnsGarbled(counts, clock.getAsLong())) {
            listener.garbled("Most of what comes from " + where
                    + " cannot be read. Check the speed of the line: both ends must use the same.");
        }
    }

    @Override
    public void exceptionCaught(ChannelHandlerContext context, Throwable cause) {
        if (cause instanceof IOException) {
            reason = ConnectTrouble.ofLosing(where, cause);
            context.close();
        } else {
            LOG.error("A fault of this program while it handled what came from {}", where, cause);
        }
    }

    @Override
    public void channelInactive(ChannelHandlerContext context) {
        if (!isMuted) {
            listener.lost(reason);
        }
    }
}
