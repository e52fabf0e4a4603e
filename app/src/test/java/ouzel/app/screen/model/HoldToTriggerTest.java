package ouzel.app.screen.model;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class HoldToTriggerTest {
    private final HoldToTrigger hold = new HoldToTrigger();
    private long millis;
    private int completions;

    @Test
    void completesOnceAfter800Milliseconds() {
        hold.press(now());
        pass(799);
        assertThat(completions).isZero();

        pass(5_000);
        assertThat(completions).isEqualTo(1);
        assertThat(hold.state()).isEqualTo(HoldToTrigger.State.COMPLETED);
    }

    @Test
    void doesNothingWhenLetGoBefore() {
        hold.press(now());
        pass(790);
        hold.release(now());
        pass(5_000);

        assertThat(completions).isZero();
        assertThat(hold.why()).isEqualTo("let go too early");
    }

    @Test
    void aReleaseAtTheLastMomentIsNotOverrunWhileItMayStillBeARepeat() {
        hold.press(now());
        pass(795);
        hold.release(now());
        pass(10);

        assertThat(completions).isZero();
        pass(100);
        assertThat(completions).isZero();
    }

    @Test
    void repeatedPressesNeitherRestartNorCompleteTwice() {
        hold.press(now());
        for (int i = 0; i < 100; i++) {
            pass(30);
            hold.press(now());
        }

        assertThat(completions).isEqualTo(1);
    }

    @Test
    void pairsOfReleaseAndPressAtOneInstantAreAKeyThatRepeats() {
        hold.press(now());
        for (int i = 0; i < 40; i++) {
            pass(25);
            hold.release(now());
            hold.press(now() + 2_000_000);
        }

        assertThat(completions).isEqualTo(1);
    }

    @Test
    void aPressSixMillisecondsAfterTheReleaseBeginsAgain() {
        hold.press(now());
        pass(500);
        hold.release(now());
        hold.press(now() + 6_000_000);
        pass(600);
        assertThat(completions).isZero();

        pass(300);
        assertThat(completions).isEqualTo(1);
    }

    @Test
    void aCancelledHoldNeedsAFreshPress() {
        hold.press(now());
        pass(300);
        hold.cancel("no longer armed");
        hold.press(now());
        pass(2_000);
        assertThat(completions).isZero();

        hold.release(now());
        pass(100);
        hold.press(now());
        pass(900);
        assertThat(completions).isEqualTo(1);
    }

    @Test
    void aScreenThatStoodStillCancels() {
        hold.press(now());
        pass(300);
        millis += 301;
        pass(1_000);

        assertThat(completions).isZero();
        assertThat(hold.why()).isEqualTo("screen stood still");
    }

    @Test
    void letGoNeedsNoRelease() {
        hold.press(now());
        pass(300);
        hold.letGo("keyboard lost");
        pass(2_000);
        assertThat(completions).isZero();

        hold.press(now());
        pass(900);
        assertThat(completions).isEqualTo(1);
    }

    @Test
    void theBarFillsWithTheTime() {
        hold.press(now());
        pass(400);

        assertThat(hold.fraction(now())).isEqualTo(0.5);
    }

    @Property
    void noChainOfShortTouchesEverCompletes(@ForAll @IntRange(min = 1, max = 40) int touches, @ForAll long seed) {
        java.util.Random random = new java.util.Random(seed);
        for (int i = 0; i < touches; i++) {
            hold.press(now());
            pass(random.nextInt(799));
            hold.release(now());
            pass(31 + random.nextInt(200));
        }

        assertThat(completions).isZero();
    }

    private long now() {
        return millis * 1_000_000;
    }

    private void pass(long duration) {
        for (int i = 0; i < duration; i++) {
            millis++;
            if (millis % 5 == 0 && hold.tick(now())) {
                completions++;
            }
        }
    }
}
