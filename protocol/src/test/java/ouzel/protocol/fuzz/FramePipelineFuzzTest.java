package ouzel.protocol.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.netty.buffer.ByteBuf;
import io.netty.buffer.UnpooledByteBufAllocator;
import io.netty.channel.embedded.EmbeddedChannel;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.netty.FrameDecoder;

/** Any bytes at all, cut anywhere, through a Netty pipeline whose every buffer is counted. */
class FramePipelineFuzzTest {
    private static final Frame GOOD = new Frame(new Header(Header.VERSION, 0x48, 7, 1, 2), Bytes.of((byte) 0x10));

    @FuzzTest(maxDuration = "3m")
    void noBufferIsKeptAndTheNextGoodFrameIsHeard(byte[] bytes) {
        UnpooledByteBufAllocator memory = new UnpooledByteBufAllocator(true, true);
        EmbeddedChannel channel = new EmbeddedChannel(new FrameDecoder());
        int cut = bytes.length == 0 ? 0 : (bytes[0] & 0xFF) % (bytes.length + 1);

        channel.writeInbound(buffer(memory, bytes, 0, cut));
        channel.writeInbound(buffer(memory, bytes, cut, bytes.length - cut));
        assertThat(memory.metric().usedDirectMemory()).isZero();
        byte[] good = FrameEncoder.encode(GOOD);
        channel.writeInbound(buffer(memory, good, 0, good.length));

        assertThat(memory.metric().usedDirectMemory()).isZero();
        assertThat(channel.inboundMessages()).last().isEqualTo(GOOD);
        channel.finishAndReleaseAll();
    }

    private static ByteBuf buffer(UnpooledByteBufAllocator memory, byte[] bytes, int from, int length) {
        return memory.directBuffer(Math.max(1, length)).writeBytes(bytes, from, length);
    }
}
