package ouzel.protocol.codec;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.frame.FrameParser;
import ouzel.protocol.message.Message;
import ouzel.protocol.message.VersionRefusal;

/** Any message on a damaged line: it is heard whole or not at all, and the next one is heard. */
class MessageDamageTest {
    private static final Frame NEXT = MessageCodec.encode(new VersionRefusal(0x10, 0x20), 9, 1, 2);

    @Property(tries = 200)
    void isNotHeardWithAnyBitTurned(@ForAll("messages") Message message) {
        byte[] line = FrameEncoder.encode(MessageCodec.encode(message, 7, 3, 4));

        for (int bit = 8; bit < (line.length - 1) * 8; bit++) {
            byte[] turned = line.clone();
            turned[bit / 8] ^= (byte) (1 << bit % 8);
            assertThat(heard(turned, FrameEncoder.encode(NEXT)))
                    .as("bit %d", bit)
                    .containsExactly(NEXT);
        }
    }

    @Property(tries = 200)
    void isNotHeardWhenCutAnywhere(@ForAll("messages") Message message) {
        byte[] line = FrameEncoder.encode(MessageCodec.encode(message, 7, 3, 4));

        for (int length = 0; length < line.length - 1; length++) {
            assertThat(heard(Arrays.copyOf(line, length), FrameEncoder.encode(NEXT)))
                    .as("%d bytes", length)
                    .containsExactly(NEXT);
        }
    }

    @Property(tries = 500)
    void isHeardBehindAnyGarbage(@ForAll("messages") Message message, @ForAll @Size(max = 300) byte[] garbage) {
        Frame frame = MessageCodec.encode(message, 7, 3, 4);

        List<Frame> heard = heard(garbage, FrameEncoder.encode(frame));

        assertThat(heard).last().isEqualTo(frame);
        assertThat(MessageCodec.decode(heard.get(heard.size() - 1))).isEqualTo(new Decoded.Known(message));
    }

    @Provide
    Arbitrary<Message> messages() {
        return Arbitraries.oneOf(Messages.opens(), Messages.downlinks());
    }

    private static List<Frame> heard(byte[]... chunks) {
        FrameParser parser = new FrameParser();
        List<Frame> heard = new ArrayList<>();
        for (byte[] chunk : chunks) {
            parser.feed(chunk, heard::add);
        }
        return heard;
    }
}
