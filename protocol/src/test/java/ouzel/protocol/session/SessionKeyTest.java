package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;

import at.favre.lib.hkdf.HKDF;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import ouzel.protocol.message.Bytes;

class SessionKeyTest {
    private static final byte[] SECRET = counting(1);
    private static final PairingKey PAIRING = PairingKey.of(SECRET);
    private static final Bytes CONSOLE = Bytes.of(Arrays.copyOf(counting(0x40), 16));
    private static final Bytes PAYLOAD = Bytes.of(Arrays.copyOf(counting(0x80), 16));

    /** The recipe of PROTOCOL.md written out once more, with another library's derivation. */
    @Property(tries = 100)
    void followsTheRecipeOnPaper(@ForAll @Size(4) byte[] data, @ForAll @IntRange(min = 1, max = 65_535) int payload)
            throws Exception {
        SessionKey key = SessionKey.derive(PAIRING, CONSOLE, PAYLOAD, payload);

        byte[] expanded = expanded(payload);
        assertThat(key.tagOfOrder(data, data)).isEqualTo(tag(Arrays.copyOf(expanded, 32), data, data));
        assertThat(key.proof(CONSOLE, PAYLOAD).toArray())
                .isEqualTo(tag(Arrays.copyOfRange(expanded, 32, 64), CONSOLE.toArray(), PAYLOAD.toArray()));
        assertThat(key.number())
                .isEqualTo(
                        ByteBuffer.wrap(expanded).order(ByteOrder.LITTLE_ENDIAN).getInt(64) & 0xFFFF_FFFFL);
    }

    @Test
    void changesWithEachOfItsIngredients() {
        long number = SessionKey.derive(PAIRING, CONSOLE, PAYLOAD, 5).number();

        assertThat(SessionKey.derive(PairingKey.rehearsal(), CONSOLE, PAYLOAD, 5)
                        .number())
                .isNotEqualTo(number);
        assertThat(SessionKey.derive(PAIRING, PAYLOAD, PAYLOAD, 5).number()).isNotEqualTo(number);
        assertThat(SessionKey.derive(PAIRING, CONSOLE, CONSOLE, 5).number()).isNotEqualTo(number);
        assertThat(SessionKey.derive(PAIRING, CONSOLE, PAYLOAD, 6).number()).isNotEqualTo(number);
    }

    @Test
    void provesTheTwoDirectionsUnderDifferentKeys() {
        SessionKey key = SessionKey.derive(PAIRING, CONSOLE, PAYLOAD, 5);

        byte[] reflected = key.tagOfOrder(CONSOLE.toArray(), PAYLOAD.toArray());

        assertThat(key.proof(CONSOLE, PAYLOAD).toArray()).isNotEqualTo(reflected);
    }

    @Test
    void showsNothingButItsPublicNumber() {
        SessionKey key = SessionKey.derive(PAIRING, CONSOLE, PAYLOAD, 5);

        assertThat(key).hasToString("SessionKey[" + key.number() + "]");
    }

    private static byte[] expanded(int payload) {
        byte[] salt = ByteBuffer.allocate(32)
                .put(CONSOLE.toArray())
                .put(PAYLOAD.toArray())
                .array();
        byte[] info = ByteBuffer.allocate(9)
                .put("ouzel/1".getBytes(StandardCharsets.US_ASCII))
                .put((byte) payload)
                .put((byte) (payload >> 8))
                .array();
        return HKDF.fromHmacSha256().extractAndExpand(salt, SECRET, info, 68);
    }

    private static byte[] tag(byte[] key, byte[]... parts) throws Exception {
        Mac mac = Mac.getInstance("HmacSHA256");
        mac.init(new SecretKeySpec(key, "HmacSHA256"));
        for (byte[] part : parts) {
            mac.update(part);
        }
        return Arrays.copyOf(mac.doFinal(), 16);
    }

    private static byte[] counting(int first) {
        byte[] bytes = new byte[32];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) (first + i);
        }
        return bytes;
    }
}
