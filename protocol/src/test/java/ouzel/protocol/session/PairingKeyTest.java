package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PairingKeyTest {
    private static final String DIGITS = "c0ffee00c0ffee00c0ffee00c0ffee00c0ffee00c0ffee00c0ffee00c0ffee01";

    @Test
    void isReadFromHexDigitsOfEitherCase() {
        assertThat(PairingKey.fromHex(DIGITS)).isEqualTo(PairingKey.fromHex(DIGITS.toUpperCase(java.util.Locale.ROOT)));
    }

    @Test
    void showsNothingOfItself() {
        assertThat(PairingKey.fromHex(DIGITS)).hasToString("PairingKey[secret]");
        assertThat(PairingKey.rehearsal()).hasToString("PairingKey[rehearsal]");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "c0ffee", DIGITS + "00", "x0ffee00c0ffee00c0ffee00c0ffee00c0ffee00c0ffee00c0ffee00c0ffee01"})
    void refusesAnythingElseWithoutRepeatingIt(String digits) {
        assertThatThrownBy(() -> PairingKey.fromHex(digits))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("digits : " + digits.length() + " characters (expected: 64 hex digits)");
    }

    @Test
    void refusesAnotherLength() {
        assertThatThrownBy(() -> PairingKey.of(new byte[31])).hasMessage("secret : 31 bytes (expected: 32)");
    }

    @Test
    void keepsACopyOfTheBytes() {
        byte[] secret = new byte[32];
        PairingKey key = PairingKey.of(secret);
        Arrays.fill(secret, (byte) 9);

        assertThat(key).isEqualTo(PairingKey.of(new byte[32])).isNotEqualTo(PairingKey.of(secret));
        assertThat(key).hasSameHashCodeAs(PairingKey.of(new byte[32]));
    }

    @Test
    void knowsTheKeyThatEverybodyKnows() {
        assertThat(PairingKey.rehearsal().isRehearsal()).isTrue();
        assertThat(PairingKey.fromHex(DIGITS).isRehearsal()).isFalse();
    }

    @Test
    void hasNoPublicMethodThatGivesItsBytes() {
        assertThat(PairingKey.class.getDeclaredMethods())
                .filteredOn(method -> Modifier.isPublic(method.getModifiers()))
                .extracting(Method::getReturnType)
                .containsOnly(PairingKey.class, boolean.class, int.class, String.class);
    }
}
