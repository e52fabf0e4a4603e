package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import at.favre.lib.hkdf.HKDF;
import java.nio.charset.StandardCharsets;
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
import org.junit.jupiter.params.provider.MethodSource;

class HmacTest {
    private static final byte[] INPUT_OF_RFC_5869 = filled(22, 0x0b);

    static Stream<Arguments> rfc4231() {
        return Stream.of(
                Arguments.of(
                        1,
                        filled(20, 0x0b),
                        ascii("Hi There"),
                        "b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7"),
                Arguments.of(
                        2,
                        ascii("Jefe"),
                        ascii("what do ya want for nothing?"),
                        "5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843"),
                Arguments.of(
                        3,
                        filled(20, 0xaa),
                        filled(50, 0xdd),
                        "773ea91e36800e46854db8ebd09181a72959098b3ef8c122d9635514ced565fe"),
                Arguments.of(
                        4,
                        bytes("0102030405060708090a0b0c0d0e0f10111213141516171819"),
                        filled(50, 0xcd),
                        "82558a389a443c0ea4cc819899f2083a85f0faa3e578f8077a2e3ff46729665b"),
                Arguments.of(5, filled(20, 0x0c), ascii("Test With Truncation"), "a3b6167473100ee06e0c796c2955552b"),
                Arguments.of(
                        6,
                        filled(131, 0xaa),
                        ascii("Test Using Larger Than Block-Size Key - Hash Key First"),
                        "60e431591ee0b67f0d8a26aacbf5b77f8e0bc6213728c5140546040f0ee37f54"),
                Arguments.of(
                        7,
                        filled(131, 0xaa),
                        ascii("This is a test using a larger than block-size key and a larger than block-size data."
                                + " The key needs to be hashed before being used by the HMAC algorithm."),
                        "9b09ffa71b942fcb27635fbcd5b0e944bfdc63644f0713938a7f51535c3a35e2"));
    }

    /** RFC 4231, section 4; of case 5 the RFC gives the left 128 bits, which is how this protocol cuts its tags. */
    @ParameterizedTest(name = "RFC 4231, case {0}")
    @MethodSource("rfc4231")
    void givesTheTagsOfRfc4231(int number, byte[] key, byte[] data, String expected) {
        assertThat(hex(Hmac.of(key, data))).startsWith(expected);
    }

    @Test
    void takesItsInputInParts() {
        assertThat(Hmac.of(ascii("Jefe"), ascii("what do ya"), ascii(" want for"), ascii(" nothing?")))
                .isEqualTo(Hmac.of(ascii("Jefe"), ascii("what do ya want for nothing?")));
    }

    /** RFC 5869, appendix A.1. */
    @Test
    void derivesTheKeysOfRfc5869() {
        byte[] extracted = Hmac.extract(bytes("000102030405060708090a0b0c"), INPUT_OF_RFC_5869);
        byte[] expanded = Hmac.expand(extracted, bytes("f0f1f2f3f4f5f6f7f8f9"), 42);

        assertThat(hex(extracted)).isEqualTo("077709362c2e32df0ddc3f0dc47bba6390b6c73bb50f9c3122ec844ad7c2b3e5");
        assertThat(hex(expanded))
                .isEqualTo("3cb25f25faacd57a90434f64d0362f2a2d2d0a90cf1a5a4c5db02d56ecc4c5bf34007208d5b887185865");
    }

    /** RFC 5869, appendix A.3: no salt, which is 32 zeros, and no info; OKM computed. */
    @Test
    void derivesWithoutInfo() {
        byte[] extracted = Hmac.extract(new byte[32], INPUT_OF_RFC_5869);
        byte[] expanded = Hmac.expand(extracted, new byte[0], 42);

        assertThat(hex(extracted)).isEqualTo("19ef24a32c717b167f33a91d6f648bdf96596776afdb6377ac434c1c293ccb04");
        assertThat(hex(expanded))
                .isEqualTo("8da4e775a563c18f715f802a063c5a31b8a11f5c5ee1879ec3454e5f3c738d2d9d201395faa4b61a96c8");
    }

    @Property(tries = 200)
    void agreesWithAnIndependentDerivation(
            @ForAll @Size(32) byte[] salt,
            @ForAll @Size(32) byte[] key,
            @ForAll @Size(max = 40) byte[] info,
            @ForAll @IntRange(min = 1, max = 200) int length) {
        byte[] independent = HKDF.fromHmacSha256().extractAndExpand(salt, key, info, length);

        assertThat(Hmac.expand(Hmac.extract(salt, key), info, length)).isEqualTo(independent);
    }

    /** RFC 5869, section 2.3: at most 255 hash lengths (from memory). */
    @Test
    void refusesToDeriveMoreThanTheRfcAllows() {
        assertThat(Hmac.expand(new byte[32], new byte[0], 8_160)).hasSize(8_160);
        assertThatThrownBy(() -> Hmac.expand(new byte[32], new byte[0], 8_161))
                .hasMessage("length : 8161 (expected: 1 to 8160)");
        assertThatThrownBy(() -> Hmac.expand(new byte[32], new byte[0], 0)).hasMessageStartingWith("length : 0");
    }

    private static byte[] filled(int length, int value) {
        byte[] bytes = new byte[length];
        Arrays.fill(bytes, (byte) value);
        return bytes;
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private static byte[] bytes(String hex) {
        return HexFormat.of().parseHex(hex);
    }

    private static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(bytes);
    }
}
