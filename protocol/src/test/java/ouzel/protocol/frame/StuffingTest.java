package ouzel.protocol.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The table is that of Cheshire and Baker, IEEE/ACM Transactions on Networking 7(2), 1999, and its longer rows. */
class StuffingTest {
    @ParameterizedTest
    @CsvSource({
        "'', 01",
        "00, 0101",
        "0000, 010101",
        "001100, 01021101",
        "11220033, 0311220233",
        "11223344, 0511223344",
        "11000000, 0211010101",
    })
    void stuffsTheShortRowsOfThePaper(String plain, String stuffed) {
        assertThat(hex(Stuffing.stuff(bytes(plain)))).isEqualTo(stuffed);
        assertThat(hex(unstuff(bytes(stuffed)))).isEqualTo(plain);
    }

    static Stream<Arguments> longRows() {
        return Stream.of(
                Arguments.of(run(1, 253), join(0xFE, run(1, 253))),
                Arguments.of(run(1, 254), join(0xFF, run(1, 254), 1)),
                Arguments.of(join(0, run(1, 254)), join(1, 0xFF, run(1, 254), 1)),
                Arguments.of(run(1, 255), join(0xFF, run(1, 254), 2, 0xFF)),
                Arguments.of(join(run(2, 254), 0), join(0xFF, run(2, 254), 1, 1)),
                Arguments.of(join(run(3, 253), 0, 1), join(0xFE, run(3, 253), 2, 1)),
                Arguments.of(join(run(1, 254), 0), join(0xFF, run(1, 254), 1, 1)));
    }

    @ParameterizedTest
    @MethodSource("longRows")
    void stuffsTheRowsAroundAFullPiece(byte[] plain, byte[] stuffed) {
        assertThat(hex(Stuffing.stuff(plain))).isEqualTo(hex(stuffed));
        assertThat(hex(unstuff(stuffed))).isEqualTo(hex(plain));
    }

    @Test
    void acceptsAFullPieceAtTheEndWithAndWithoutItsLastCode() {
        byte[] plain = run(1, 254);

        assertThat(unstuff(join(0xFF, plain, 1))).isEqualTo(plain);
        assertThat(unstuff(join(0xFF, plain))).isEqualTo(plain);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "00", "0311", "051122", "0200", "021100", "031100", "0111000211", "FF01"})
    void refusesWhatIsNoStuffedRun(String stuffed) {
        byte[] bytes = bytes(stuffed);

        assertThat(Stuffing.unstuff(bytes, bytes.length)).isEqualTo(Stuffing.BROKEN);
    }

    @Property
    void roundTripsAnything(@ForAll @Size(max = 1030) byte[] plain) {
        assertThat(unstuff(Stuffing.stuff(plain))).isEqualTo(plain);
    }

    @Property
    void roundTripsRunsWithoutAnyZero(@ForAll @IntRange(max = 1030) int length) {
        byte[] plain = new byte[length];
        Arrays.fill(plain, (byte) 0x5A);

        byte[] stuffed = Stuffing.stuff(plain);

        assertThat(unstuff(stuffed)).isEqualTo(plain);
        assertThat(stuffed).hasSize(Stuffing.longest(length)).doesNotContain((byte) 0);
    }

    @Property
    void roundTripsRunsOfNothingButZeros(@ForAll @IntRange(max = 1030) int length) {
        byte[] stuffed = Stuffing.stuff(new byte[length]);

        assertThat(unstuff(stuffed)).isEqualTo(new byte[length]);
        assertThat(stuffed).hasSize(length + 1).containsOnly(1);
    }

    @ParameterizedTest
    @ValueSource(ints = {253, 254, 255, 508, 509})
    void roundTripsTheLengthsAroundFullPieces(int length) {
        byte[] plain = run(1, length);

        assertThat(unstuff(Stuffing.stuff(plain))).isEqualTo(plain);
    }

    @Property
    void neverLeavesAZeroAndNeverOutgrowsItsBound(@ForAll @Size(max = 600) byte[] plain) {
        byte[] stuffed = Stuffing.stuff(plain);

        assertThat(stuffed).doesNotContain((byte) 0);
        assertThat(stuffed.length).isLessThanOrEqualTo(Stuffing.longest(plain.length));
    }

    @Property
    void survivesAnyRunOfBytes(@ForAll @Size(max = 300) byte[] anything) {
        int plain = Stuffing.unstuff(anything.clone(), anything.length);

        assertThat(plain).isBetween(Stuffing.BROKEN, anything.length);
    }

    private static byte[] unstuff(byte[] stuffed) {
        byte[] bytes = stuffed.clone();
        int length = Stuffing.unstuff(bytes, bytes.length);
        assertThat(length).isNotEqualTo(Stuffing.BROKEN);
        return Arrays.copyOf(bytes, length);
    }

    /** {@code length} bytes that count up from {@code first} and go round from 255 to 1. */
    private static byte[] run(int first, int length) {
        byte[] bytes = new byte[length];
        for (int i = 0; i < length; i++) {
            bytes[i] = (byte) ((first - 1 + i) % 255 + 1);
        }
        return bytes;
    }

    private static byte[] join(Object... parts) {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        for (Object part : parts) {
            if (part instanceof byte[] bytes) {
                whole.writeBytes(bytes);
            } else {
                whole.write((Integer) part);
            }
        }
        return whole.toByteArray();
    }

    private static byte[] bytes(String hex) {
        return HexFormat.of().parseHex(hex);
    }

    private static String hex(byte[] bytes) {
        return HexFormat.of().withUpperCase().formatHex(bytes);
    }
}
