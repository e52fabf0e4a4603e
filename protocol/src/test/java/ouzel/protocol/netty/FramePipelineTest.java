package ouzel.protocol.netty;

import static org.assertj.core.api.Assertions.assertThat;

import io.netty.buffer.ByteBuf;
import io.netty.buffer.Unpooled;
import io.netty.channel.embedded.EmbeddedChannel;
import io.netty.util.ResourceLeakDetector;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;

class FramePipelineTest {
    private static final Frame FRAME =
            new Frame(new Header(Header.VERSION, 0x42, 5, 77, 4_711), Bytes.of((byte) 0, (byte) 1, (byte) 0));

    private final FrameDecoder decoder = new FrameDecoder();
    private final EmbeddedChannel channel = new EmbeddedChannel(decoder, new FrameEncoderHandler());

    @BeforeAll
    static void watchEveryBuffer() {
        ResourceLeakDetector.setLevel(ResourceLeakDetector.Level.PARANOID);
    }

    @AfterEach
    void nothingIsLeftOver() {
        assertThat(channel.finish()).isFalse();
    }

    @Test
    void decodesAFrame() {
        channel.writeInbound(line());

        assertThat(channel.<Frame>readInbound()).isEqualTo(FRAME);
    }

    @Test
    void decodesAFrameThatArrivesByteByByte() {
        for (byte one : FrameEncoder.encode(FRAME)) {
            channel.writeInbound(Unpooled.wrappedBuffer(new byte[] {one}));
        }

        assertThat(channel.<Frame>readInbound()).isEqualTo(FRAME);
    }

    @Test
    void decodesFiftyFramesAfterOneStrayByte() {
        channel.writeInbound(Unpooled.wrappedBuffer(new byte[] {0x2A}));
        for (int i = 0; i < 50; i++) {
            channel.writeInbound(line());
        }

        assertThat(channel.inboundMessages()).hasSize(50).containsOnly(FRAME);
        channel.inboundMessages().clear();
    }

    @Test
    void decodesEveryFrameOfOneBuffer() {
        channel.writeInbound(Unpooled.wrappedBuffer(line(), line(), line()));

        assertThat(channel.inboundMessages()).containsExactly(FRAME, FRAME, FRAME);
        channel.inboundMessages().clear();
    }

    @Test
    void encodesAFrame() {
        channel.writeOutbound(FRAME);

        ByteBuf out = channel.readOutbound();
        byte[] bytes = new byte[out.readableBytes()];
        out.readBytes(bytes).release();
        assertThat(bytes).isEqualTo(FrameEncoder.encode(FRAME));
    }

    @Test
    void releasesEveryBufferItWasGiven() {
        ByteBuf noise = Unpooled.wrappedBuffer(new byte[] {1, 2, 3});
        ByteBuf frame = line();

        channel.writeInbound(noise, frame);

        assertThat(noise.refCnt()).isZero();
        assertThat(frame.refCnt()).isZero();
        channel.inboundMessages().clear();
    }

    @Test
    void countsTheGarbageItSkipsAndKeepsNoneOfIt() {
        byte[] noise = new byte[50_000];
        new Random(3).nextBytes(noise);
        Arrays.fill(noise, 0, 10, (byte) 9);

        channel.writeInbound(Unpooled.wrappedBuffer(noise));

        assertThat(decoder.counts().bad()).isGreaterThan(100);
        assertThat(channel.inboundMessages()).isEmpty();
    }

    private static ByteBuf line() {
        return Unpooled.wrappedBuffer(FrameEncoder.encode(FRAME));
    }
}
