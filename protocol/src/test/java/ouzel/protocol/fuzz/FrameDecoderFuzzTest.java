package ouzel.protocol.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.ArrayList;
import java.util.List;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.frame.FrameParser;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;

/** Any bytes at all, fed to the parser in two pieces and then one byte at a time, and a good frame behind them. */
class FrameDecoderFuzzTest {
    private static final Frame GOOD = new Frame(new Header(Header.VERSION, 0x48, 7, 1, 2), Bytes.of((byte) 0x10));

    @FuzzTest(maxDuration = "3m")
    void theNextGoodFrameIsAlwaysDecodedHoweverTheBytesWereSplit(byte[] bytes) {
        List<Frame> whole = new ArrayList<>();
        FrameParser parser = new FrameParser();
        parser.feed(bytes, whole::add);
        parser.feed(FrameEncoder.encode(GOOD), whole::add);

        List<Frame> single = new ArrayList<>();
        FrameParser slow = new FrameParser();
        for (byte one : bytes) {
            slow.feed(new byte[] {one}, single::add);
        }
        slow.feed(FrameEncoder.encode(GOOD), single::add);

        assertThat(whole).isEqualTo(single).endsWith(GOOD);
        assertThat(parser.counts()).isEqualTo(slow.counts());
        assertThat(parser.counts().good()).isEqualTo(whole.size());
        for (Frame frame : whole) {
            List<Frame> again = new ArrayList<>();
            new FrameParser().feed(FrameEncoder.encode(frame), again::add);
            assertThat(again).containsExactly(frame);
        }
    }
}
