package ouzel.protocol.netty;

import static org.assertj.core.api.Assertions.assertThat;

import io.netty.buffer.ByteBuf;
import io.netty.buffer.UnpooledByteBufAllocator;
import io.netty.channel.embedded.EmbeddedChannel;
import java.util.Random;
import org.junit.jupiter.api.Test;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;

/** Every buffer is counted: what a connection took, it gave back, however it ended. */
class BufferLeakTest {
    private final UnpooledByteBufAllocator memory = new UnpooledByteBufAllocator(true, true);

    @Test
    void tenThousandConnectionsFullOfGarbageThatBreakOffKeepNoBuffer() {
        Random random = new Random(3);
        for (int i = 0; i < 10_000; i++) {
            EmbeddedChannel channel = channel();
            channel.writeInbound(garbage(random, 1 + random.nextInt(600)));
            channel.writeOutbound(new Frame(new Header(Header.VERSION, 0x48, 7, 1, 2), Bytes.of((byte) i)));
            channel.finishAndReleaseAll();
        }

        assertThat(memory.metric().usedDirectMemory()).isZero();
        assertThat(memory.metric().usedHeapMemory()).isZero();
    }

    @Test
    void theCountSeesABufferThatIsKept() {
        ByteBuf kept = garbage(new Random(4), 10);

        assertThat(memory.metric().usedDirectMemory()).isPositive();
        kept.release();
        assertThat(memory.metric().usedDirectMemory()).isZero();
    }

    private EmbeddedChannel channel() {
        EmbeddedChannel channel = new EmbeddedChannel();
        channel.config().setAllocator(memory);
        channel.pipeline().addLast(new FrameDecoder(), new FrameEncoderHandler());
        return channel;
    }

    private ByteBuf garbage(Random random, int length) {
        byte[] bytes = new byte[length];
        random.nextBytes(bytes);
        return memory.directBuffer(length).writeBytes(bytes);
    }
}
