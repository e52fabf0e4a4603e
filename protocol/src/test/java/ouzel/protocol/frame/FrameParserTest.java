package ouzel.protocol.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ouzel.protocol.message.Bytes;

class FrameParserTest {
    private final FrameParser parser = new FrameParser();
    private final List<Frame> heard = new ArrayList<>();

    @Property
    void roundTripsEveryBody(@ForAll @Size(max = Frame.LONGEST_BODY) byte[] body) {
        Frame frame = frame(7, body);

        assertThat(parse(FrameEncoder.encode(frame))).containsExactly(frame);
    }

    @Test
    void takesOneByteAtATime() {
        Frame frame = frame(1, 0, 1, 0, 2, 0);

        for (byte one : FrameEncoder.encode(frame)) {
            parser.feed(new byte[] {one}, heard::add);
        }

        assertThat(heard).containsExactly(frame);
    }

    @Test
    void givesTheSameFramesWhereverTheStreamIsSplit() {
        List<Frame> sent = List.of(frame(1), frame(2, 0, 0), frame(3, 1, 2, 3), frame(4, 0xFF), frame(5, 9, 0));
        byte[] stream = stream(sent);

        for (int first = 0; first <= stream.length; first++) {
            for (int second = first; second <= stream.length; second++) {
                assertThat(parse(
                                Arrays.copyOfRange(stream, 0, first),
                                Arrays.copyOfRange(stream, first, second),
                                Arrays.copyOfRange(stream, second, stream.length)))
                        .isEqualTo(sent);
            }
        }
    }

    @Test
    void losesAFrameThatIsCutAnywhereAndHearsTheNext() {
        byte[] cut = FrameEncoder.encode(frame(1, 5, 0, 7, 8));
        Frame next = frame(2, 1, 2);

        for (int length = 2; length < cut.length - 1; length++) {
            assertThat(parse(Arrays.copyOf(cut, length), FrameEncoder.encode(next)))
                    .as("cut after %d bytes", length)
                    .containsExactly(next);
        }
    }

    @Test
    void refusesEverySingleFlippedBitAndHearsTheNext() {
        byte[] right = FrameEncoder.encode(frame(1, 0x11, 0, 0x22, 0x33));
        Frame next = frame(2);

        for (int bit = 8; bit < (right.length - 1) * 8; bit++) {
            byte[] wrong = right.clone();
            wrong[bit / 8] ^= (byte) (1 << bit % 8);

            assertThat(parse(wrong, FrameEncoder.encode(next)))
                    .as("bit %d", bit)
                    .containsExactly(next);
        }
    }

    @Test
    void hearsAFrameEvenWhenOneOfItsDelimitersIsDamaged() {
        byte[] first = FrameEncoder.encode(frame(1));
        first[first.length - 1] = 0x55;
        byte[] second = FrameEncoder.encode(frame(2));

        assertThat(parse(first, second)).contains(frame(2));
    }

    @Property
    void hearsTheGoodFramesAmongGarbage(
            @ForAll @Size(max = 400) byte[] before, @ForAll @Size(max = 400) byte[] between) {
        Frame first = frame(1, 1, 2, 3);
        Frame second = frame(2, 0, 0, 0);

        List<Frame> frames = parse(before, FrameEncoder.encode(first), between, FrameEncoder.encode(second));

        assertThat(frames).containsExactly(first, second);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void survivesRandomStreams(long seed) {
        Random random = new Random(seed);
        byte[] noise = new byte[100_000];
        random.nextBytes(noise);

        parser.feed(noise, heard::add);
        parser.feed(FrameEncoder.encode(frame(9)), heard::add);

        assertThat(heard).as("seed %d", seed).endsWith(frame(9)).hasSizeLessThan(4);
        assertThat(parser.counts().bad()).as("seed %d", seed).isGreaterThan(300);
    }

    @Test
    void skipsEmptyFramesSilently() {
        assertThat(parse(new byte[1000])).isEmpty();
        assertThat(parser.counts()).isEqualTo(ParserCounts.NONE);
    }

    @Test
    void takesTheShortestAndTheLongestFrameAndNothingBeyond() {
        Frame shortest = frame(1);
        Frame longest = frame(2, new byte[Frame.LONGEST_BODY]);

        assertThat(parse(FrameEncoder.encode(shortest), FrameEncoder.encode(longest)))
                .containsExactly(shortest, longest);
        assertThat(parser.counts()).isEqualTo(new ParserCounts(2, 0, 0, 0, 0));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 10, 11})
    void countsAFrameThatIsTooShort(int length) {
        assertThat(parse(line(withCrc(length)))).isEmpty();
        assertThat(parser.counts()).isEqualTo(new ParserCounts(0, 0, 0, 1, 0));
    }

    @ParameterizedTest
    @ValueSource(ints = {241, 242, 300, 5_000, 100_000})
    void countsAFrameThatIsTooLongOnceHoweverLongItIs(int length) {
        assertThat(parse(line(withCrc(length)), FrameEncoder.encode(frame(3)))).containsExactly(frame(3));
        assertThat(parser.counts()).isEqualTo(new ParserCounts(1, 0, 0, 0, 1));
    }

    @Test
    void tellsBrokenStuffingFromAWrongChecksum() {
        byte[] wrong = FrameEncoder.encode(frame(1, 1, 2, 3, 4));
        wrong[wrong.length - 4] ^= 1;

        assertThat(parse(new byte[] {0, 5, 1, 1, 0}, wrong)).isEmpty();
        assertThat(parser.counts()).isEqualTo(new ParserCounts(0, 1, 1, 0, 0));
    }

    @Test
    void givesOnFramesOfAnotherMajorVersion() {
        Frame foreign = new Frame(new Header(0x20, 0x99, 3, 4, 5), Bytes.of());

        assertThat(parse(FrameEncoder.encode(foreign))).containsExactly(foreign);
    }

    @Test
    void forgetsAnUnfinishedFrameWhenTheLineWasInterrupted() {
        byte[] line = FrameEncoder.encode(frame(1));
        parser.feed(Arrays.copyOf(line, 9), heard::add);

        parser.reset();
        parser.feed(Arrays.copyOfRange(FrameEncoder.encode(frame(2)), 1, 16), heard::add);

        assertThat(heard).containsExactly(frame(2));
        assertThat(parser.counts().bad()).isZero();
    }

    @Test
    void isReadyForTheNextFrameWhenItsListenerThrows() {
        byte[] line = FrameEncoder.encode(frame(1));

        assertThatThrownBy(() -> parser.feed(line, frame -> {
                    throw new IllegalStateException("listener");
                }))
                .hasMessage("listener");

        assertThat(parse(line)).containsExactly(frame(1));
    }

    @Test
    void aFrameCostsFiveBytesOnTheLineBesidesHeaderAndBody() {
        assertThat(FrameEncoder.encode(frame(1)))
                .hasSize(Header.LENGTH + 5)
                .startsWith(0)
                .endsWith(0);
        assertThat(FrameEncoder.encode(frame(1, new byte[Frame.LONGEST_BODY]))).hasSize(FrameEncoder.LONGEST);
    }

    private List<Frame> parse(byte[]... chunks) {
        heard.clear();
        for (byte[] chunk : chunks) {
            parser.feed(chunk, heard::add);
        }
        return List.copyOf(heard);
    }

    private static byte[] stream(List<Frame> frames) {
        ByteArrayOutputStream stream = new ByteArrayOutputStream();
        frames.forEach(frame -> stream.writeBytes(FrameEncoder.encode(frame)));
        return stream.toByteArray();
    }

    /** So many bytes of which the last two are the checksum of the others. */
    private static byte[] withCrc(int length) {
        byte[] plain = new byte[length];
        Arrays.fill(plain, (byte) 0x31);
        int covered = Math.max(0, length - 2);
        int crc = Crc16.of(plain, covered);
        for (int i = covered; i < length; i++) {
            plain[i] = (byte) (crc >> 8 * (i - covered));
        }
        return plain;
    }

    private static byte[] line(byte[] plain) {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        line.write(0);
        line.writeBytes(Stuffing.stuff(plain));
        line.write(0);
        return line.toByteArray();
    }

    private static Frame frame(int sequence, int... body) {
        byte[] bytes = new byte[body.length];
        for (int i = 0; i < body.length; i++) {
            bytes[i] = (byte) body[i];
        }
        return frame(sequence, bytes);
    }

    private static Frame frame(int sequence, byte[] body) {
        return new Frame(new Header(Header.VERSION, 0x42, 5, sequence, 123_456), Bytes.of(body));
    }
}
