package ouzel.protocol.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import ouzel.protocol.message.Bytes;

class HeaderTest {
    @Test
    void namesTheFieldTheValueAndTheRangeWhenOneDoesNotFit() {
        assertThatThrownBy(() -> new Header(0x10, 0x42, 70_000, 0, 0))
                .hasMessage("payload : 70000 (expected: 0 to 65535)");
        assertThatThrownBy(() -> new Header(0x10, 0x42, 1, -1, 0)).hasMessageContaining("sequence : -1");
        assertThatThrownBy(() -> new Header(0x10, 0x42, 1, 0, 1L << 32)).hasMessageContaining("timeMillis");
        assertThatThrownBy(() -> new Header(0x10, 256, 1, 0, 0)).hasMessageContaining("kind : 256");
        assertThatThrownBy(() -> new Header(256, 0, 1, 0, 0)).hasMessageContaining("version : 256");
    }

    @Test
    void readsTheMajorVersionFromTheHighNibble() {
        assertThat(new Header(0x2F, 0, 1, 0, 0).major()).isEqualTo(2);
    }

    @Test
    void isWrittenLittleEndian() {
        byte[] header = FrameEncoder.header(new Header(0x10, 0x42, 0x0102, 0x0304, 0x05060708L));

        assertThat(Bytes.of(header)).hasToString("10420201040308070605");
    }

    @Test
    void aBodyOverTheLimitMakesNoFrame() {
        Header header = new Header(0x10, 0x42, 1, 0, 0);

        assertThat(new Frame(header, Bytes.of(new byte[228])).body().length()).isEqualTo(Frame.LONGEST_BODY);
        assertThatThrownBy(() -> new Frame(header, Bytes.of(new byte[229])))
                .hasMessage("body : 229 bytes (expected: at most 228)");
    }
}
