package ouzel.app.flight;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ouzel.app.link.Port;
import ouzel.protocol.session.PairingKey;

class SerialKeyTest {
    /** The rehearsal key as its letters, as it would stand in a file that somebody made by hand. */
    private static final PairingKey REHEARSAL_BY_HAND = PairingKey.fromHex(
            HexFormat.of().formatHex("ouzel rehearsal key, no secret!!".getBytes(StandardCharsets.US_ASCII)));

    private static final Port.Serial SERIAL = Port.Serial.parse("/dev/ttyUSB0");
    private static final Port TCP = Port.Tcp.parse("localhost:5760");

    @Test
    void noDeskOpensASerialLineWithTheRehearsalKey() {
        assertThatThrownBy(() -> desk(SERIAL, REHEARSAL_BY_HAND)).hasMessageContaining("a secret one on a serial line");
    }

    @Test
    void noSimulatedPayloadSpeaksOnASerialLineWithTheRehearsalKey() {
        assertThatThrownBy(() -> new PayloadHost.Request(Optional.of(SERIAL), 0, false, REHEARSAL_BY_HAND, 1))
                .hasMessageContaining("a secret one on a serial line");
    }

    @Test
    void elsewhereTheRehearsalKeyIsTaken() {
        assertThatCode(() -> {
                    desk(TCP, PairingKey.rehearsal());
                    new PayloadHost.Request(Optional.empty(), 0, false, PairingKey.rehearsal(), 1);
                })
                .doesNotThrowAnyException();
    }

    private static void desk(Port port, PairingKey key) {
        new LiveDesk.Request(Optional.of(port), key, true, 1, Path.of("unused"), "quarry", "1");
    }
}
