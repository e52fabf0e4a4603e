package ouzel.app.screen.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PressedKeysTest {
    private static final long MILLISECOND = 1_000_000;
    private final PressedKeys keys = new PressedKeys();

    @Test
    void aHeldKeyIsFreshOnlyOnce() {
        assertThat(keys.press('1', 0)).isTrue();
        assertThat(keys.press('1', 30 * MILLISECOND)).isFalse();
    }

    @Test
    void aRepeatingPairIsNotAFreshPress() {
        keys.press('1', 0);
        keys.release('1', 30 * MILLISECOND);

        assertThat(keys.press('1', 31 * MILLISECOND)).isFalse();
    }

    @Test
    void aSecondTouchIsFresh() {
        keys.press('1', 0);
        keys.release('1', 30 * MILLISECOND);

        assertThat(keys.press('1', 90 * MILLISECOND)).isTrue();
    }

    @Test
    void keysDoNotDisturbEachOther() {
        keys.press('1', 0);

        assertThat(keys.press('2', MILLISECOND)).isTrue();
    }

    @Test
    void afterTheKeyboardWentElsewhereEveryPressIsFresh() {
        keys.press('1', 0);
        keys.forget();

        assertThat(keys.press('1', 30 * MILLISECOND)).isTrue();
    }
}
