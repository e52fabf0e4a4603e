package ouzel.protocol.netty;

import io.netty.buffer.ByteBuf;
import io.netty.channel.ChannelHandlerContext;
import io.netty.channel.SimpleChannelInboundHandler;
import ouzel.protocol.frame.FrameParser;
import ouzel.protocol.frame.ParserCounts;

/**
 * Bytes to {@link ouzel.protocol.frame.Frame}s at the head of a pipeline.
 *
 * <p>Everything that arrives is consumed at once and becomes plain records: no buffer is gathered or kept, the one
 * that came is released, and none can leak.
 * <b>Pitfall:</b> one instance per channel. <b>Thread:</b> link.
 */
public final class FrameDecoder extends SimpleChannelInboundHandler<ByteBuf> {
    private final FrameParser parser = new FrameParser();

    /** What became of the bytes so far. */
    public ParserCounts counts() {
        return parser.counts();
    }

    @Override
    protected void channelRead0(ChannelHandlerContext context, ByteBuf in) {
        parser.feed(in.nioBuffer(), context::fireChannelRead);
    }
}
