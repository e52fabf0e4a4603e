package ouzel.protocol.netty;

import io.netty.buffer.ByteBuf;
import io.netty.channel.ChannelHandlerContext;
import io.netty.handler.codec.MessageToByteEncoder;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;

/** {@link Frame}s to bytes at the head of a pipeline. Thread: link. */
public final class FrameEncoderHandler extends MessageToByteEncoder<Frame> {
    /** Takes frames and lets everything else pass. */
    public FrameEncoderHandler() {
        super(Frame.class);
    }

    @Override
    protected void encode(ChannelHandlerContext context, Frame frame, ByteBuf out) {
        out.writeBytes(FrameEncoder.encode(frame));
    }
}
