package ouzel.protocol.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.Arrays;
import ouzel.protocol.codec.Decoded;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;

/** The first byte as a kind, the others as its body. */
class MessageCodecFuzzTest {
    @FuzzTest(maxDuration = "3m")
    void whatCanBeReadCanBeWrittenAndReadAgain(byte[] bytes) {
        if (bytes.length == 0) {
            return;
        }
        int kind = bytes[0] & 0xFF;
        byte[] body = Arrays.copyOfRange(bytes, 1, Math.min(bytes.length, 1 + Frame.LONGEST_BODY));

        Decoded decoded = MessageCodec.decode(kind, body);

        if (decoded instanceof Decoded.Known known) {
            byte[] again = MessageCodec.fields(known.message());
            assertThat(Kind.of(known.message()).code()).isEqualTo(kind);
            assertThat(again.length).isLessThanOrEqualTo(body.length);
            assertThat(MessageCodec.decode(kind, again)).isEqualTo(decoded);
        } else if (decoded instanceof Decoded.Malformed malformed) {
            assertThat(malformed.why()).isNotBlank();
        } else {
            assertThat(Kind.of(kind)).isEmpty();
        }
    }
}
