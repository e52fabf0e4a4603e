package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;

import io.netty.buffer.Unpooled;
import io.netty.channel.embedded.EmbeddedChannel;
import io.netty.util.ResourceLeakDetector;
import java.io.IOException;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.netty.FrameDecoder;

class LineEndTest {
    private long nowNanos = 5;
    private final LineLog log = new LineLog(this::stumble);
    private final FrameDecoder decoder = new FrameDecoder();
    private final LineEnd end = new LineEnd("the far end", log, decoder::counts, () -> nowNanos);
    private final EmbeddedChannel channel = new EmbeddedChannel(decoder, end);
    private boolean stumbles;

    @BeforeAll
    static void watchForLeaks() {
        ResourceLeakDetector.setLevel(ResourceLeakDetector.Level.PARANOID);
    }

    @AfterEach
    void nothingIsLeftOver() {
        assertThat(channel.finish()).isFalse();
    }

    @Test
    void tellsThatItIsOpen() {
        assertThat(log.events()).containsExactly("opened the far end");
    }

    @Test
    void givesEachFrameWithTheTimeItCame() {
        nowNanos = 1_234;
        channel.writeInbound(Unpooled.wrappedBuffer(FrameEncoder.encode(Frames.numbered(1))));

        assertThat(log.frames()).containsExactly(Frames.numbered(1));
        assertThat(log.times()).containsExactly(1_234L);
    }

    @Test
    void tellsCountsOnceABatchAndOnlyWhenTheyChanged() {
        byte[] frame = FrameEncoder.encode(Frames.numbered(1));
        channel.writeInbound(Unpooled.wrappedBuffer(frame, frame, frame));
        channel.writeInbound(Unpooled.wrappedBuffer(new byte[] {0, 0, 0}));

        assertThat(log.latestCounts().good()).isEqualTo(3);
    }

    @Test
    void tenKilobytesOfNoiseGiveCountsAndNothingElse() {
        byte[] noise = new byte[10 * 1_024];
        new Random(57_600).nextBytes(noise);

        channel.writeInbound(Unpooled.wrappedBuffer(noise));

        assertThat(log.frames()).isEmpty();
        assertThat(log.latestCounts().bad()).isPositive();
        assertThat(log.events()).containsExactly("opened the far end");
    }

    @Test
    void noiseForFiveSecondsIsToldAsTheWrongSpeedOnce() {
        Random noise = new Random(115_200);
        for (int half = 0; half < 40; half++) {
            byte[] piece = new byte[2_048];
            noise.nextBytes(piece);
            nowNanos += 500_000_000L;
            channel.writeInbound(Unpooled.wrappedBuffer(piece));
        }

        assertThat(log.events()).hasSize(2);
        assertThat(log.events().get(1)).contains("cannot be read. Check the speed of the line");
    }

    @Test
    void theGreetingOfAModemProgramCostsNoFrame() {
        channel.writeInbound(
                Unpooled.copiedBuffer("AT+GCAP\r", java.nio.charset.StandardCharsets.US_ASCII),
                Unpooled.wrappedBuffer(FrameEncoder.encode(Frames.numbered(1))));

        assertThat(log.frames()).containsExactly(Frames.numbered(1));
    }

    @Test
    void tellsTheReasonOfALossOnce() {
        channel.pipeline().fireExceptionCaught(new LineFailure(LineFailure.Cause.LOST, "The plug is out."));

        assertThat(channel.isOpen()).isFalse();
        assertThat(log.events()).containsExactly("opened the far end", "lost The plug is out.");
    }

    @Test
    void putsAnErrorOfTheNetworkIntoASentence() {
        channel.pipeline().fireExceptionCaught(new IOException("Connection reset"));

        assertThat(log.events().get(1))
                .isEqualTo("lost The connection to the far end broke (Connection reset). Check the network and the far "
                        + "end.");
    }

    @Test
    void tellsAFarewellOfTheFarEnd() {
        channel.close();

        assertThat(log.events().get(1)).startsWith("lost The connection to the far end was closed by the far end.");
    }

    @Test
    void aFaultOfTheOwnerDoesNotCutTheLine() {
        stumbles = true;
        channel.writeInbound(Unpooled.wrappedBuffer(FrameEncoder.encode(Frames.numbered(1))));
        stumbles = false;
        channel.writeInbound(Unpooled.wrappedBuffer(FrameEncoder.encode(Frames.numbered(2))));

        assertThat(channel.isOpen()).isTrue();
        assertThat(log.frames()).containsExactly(Frames.numbered(1), Frames.numbered(2));
    }

    @Test
    void saysNothingMoreOnceItIsMuted() {
        end.mute();
        channel.writeInbound(Unpooled.wrappedBuffer(FrameEncoder.encode(Frames.numbered(1))));
        channel.close();

        assertThat(log.frames()).isEmpty();
        assertThat(log.events()).containsExactly("opened the far end");
    }

    private void stumble(Frame frame) {
        if (stumbles) {
            throw new IllegalStateException("planted for " + frame.header().sequence());
        }
    }
}
