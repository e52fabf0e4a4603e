package ouzel.protocol.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The check values are those of the published catalogue of parametrised CRC algorithms, CRC-16/IBM-3740. */
class Crc16Test {
    private static final byte[] DIGITS = ascii("123456789");

    @Test
    void givesTheCatalogueCheckValue() {
        assertThat(Crc16.of(DIGITS)).isEqualTo(0x29B1);
    }

    @Test
    void isNeitherOfTheTwoOthersThatGoByTheSameNickname() {
        assertThat(Crc16.of(DIGITS)).isNotEqualTo(0x31C3).isNotEqualTo(0x2189);
    }

    @ParameterizedTest
    @CsvSource({
        "'', FFFF",
        "A, B915",
        "The quick brown fox jumps over the lazy dog, 8FDD",
    })
    void givesTheComputedValueOfText(String text, String crc) {
        assertThat(Crc16.of(ascii(text))).isEqualTo(Integer.parseInt(crc, 16));
    }

    @Test
    void givesTheComputedValuesOfPlainRuns() {
        assertThat(Crc16.of((byte) 0)).isEqualTo(0xE1F0);
        assertThat(Crc16.of(filled(4, 0xFF))).isEqualTo(0x1D0F);
        assertThat(Crc16.of(filled(32, 0x00))).isEqualTo(0xF14C);
        assertThat(Crc16.of(filled(32, 0xFF))).isEqualTo(0x75F8);
        assertThat(Crc16.of(counting(0, 1))).isEqualTo(0x23B3);
        assertThat(Crc16.of(counting(31, -1))).isEqualTo(0x1086);
    }

    @Test
    void leavesNoResidueWhenItsValueFollowsHighByteFirst() {
        assertThat(Crc16.of(followedBy(DIGITS, 0x29, 0xB1))).isZero();
    }

    @Test
    void leavesTheKnownResidueWhenTheBytesAreSwapped() {
        assertThat(Crc16.of(followedBy(DIGITS, 0xB1, 0x29))).isEqualTo(0x93F3);
    }

    @Property
    void agreesWithAnIndependentImplementation(@ForAll @Size(max = 300) byte[] bytes) {
        var independent = org.apache.commons.codec.digest.Crc16.builder()
                .setInit(0xFFFF)
                .setTable(tableOfPolynomial(0x1021))
                .get();

        independent.update(swapped(bytes), 0, bytes.length);

        assertThat(Crc16.of(bytes)).isEqualTo(reflected16((int) independent.getValue()));
    }

    @Property(tries = 20)
    void findsEveryErrorOfUpToThreeBitsInAShortRun(@ForAll @Size(value = 6) byte[] bytes) {
        int right = Crc16.of(bytes);
        int bits = bytes.length * 8;

        for (int a = 0; a < bits; a++) {
            for (int b = a; b < bits; b++) {
                for (int c = b; c < bits; c++) {
                    assertThat(Crc16.of(flip(bytes, a, b, c))).isNotEqualTo(right);
                }
            }
        }
    }

    /** With the named bits inverted; a bit named twice is inverted once. */
    private static byte[] flip(byte[] bytes, int... bits) {
        byte[] flipped = bytes.clone();
        Arrays.stream(bits).distinct().forEach(bit -> flipped[bit / 8] ^= (byte) (1 << bit % 8));
        return flipped;
    }

    // The library's class shifts right, as the reflected members of the family do. Fed with mirrored bytes and a
    // mirrored table it computes the unreflected member, mirrored.
    private static int[] tableOfPolynomial(int polynomial) {
        int mirrored = reflected16(polynomial);
        int[] table = new int[256];
        for (int index = 0; index < 256; index++) {
            int crc = index;
            for (int bit = 0; bit < 8; bit++) {
                crc = (crc & 1) == 0 ? crc >> 1 : crc >> 1 ^ mirrored;
            }
            table[index] = crc;
        }
        return table;
    }

    private static byte[] swapped(byte[] bytes) {
        byte[] mirrored = new byte[bytes.length];
        for (int i = 0; i < bytes.length; i++) {
            mirrored[i] = (byte) (Integer.reverse(bytes[i]) >>> 24);
        }
        return mirrored;
    }

    private static int reflected16(int value) {
        return Integer.reverse(value) >>> 16;
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private static byte[] filled(int length, int value) {
        byte[] bytes = new byte[length];
        Arrays.fill(bytes, (byte) value);
        return bytes;
    }

    private static byte[] counting(int first, int step) {
        byte[] bytes = new byte[32];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) (first + i * step);
        }
        return bytes;
    }

    private static byte[] followedBy(byte[] bytes, int... tail) {
        byte[] whole = Arrays.copyOf(bytes, bytes.length + tail.length);
        for (int i = 0; i < tail.length; i++) {
            whole[bytes.length + i] = (byte) tail[i];
        }
        return whole;
    }
}
