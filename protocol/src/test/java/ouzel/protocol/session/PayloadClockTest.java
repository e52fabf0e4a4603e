package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class PayloadClockTest {
    private final PayloadClock clock = new PayloadClock();

    @Test
    void isUnknownUntilATimeWasHeard() {
        assertThat(clock.isKnown()).isFalse();
        clock.hear(5, millis(0));
        assertThat(clock.isKnown()).isTrue();
    }

    @Test
    void addsTheTimeSinceTheNewestFrame() {
        clock.hear(1_000, millis(50));

        assertThat(clock.millis(millis(130))).isEqualTo(1_080);
    }

    @Test
    void ignoresAFrameThatWasOvertaken() {
        clock.hear(5_000, millis(0));
        clock.hear(4_000, millis(10));

        assertThat(clock.millis(millis(10))).isEqualTo(5_010);
    }

    @Test
    void followsAPayloadThatStartedAgain() {
        clock.hear(900_000, millis(0));
        clock.hear(20, millis(1_500));

        assertThat(clock.millis(millis(1_500))).isEqualTo(20);
    }

    @Test
    void recoversFromOneAbsurdTime() {
        clock.hear(1_000, millis(0));
        clock.hear(900_000_000, millis(100));
        clock.hear(1_200, millis(200));

        assertThat(clock.millis(millis(200))).isEqualTo(1_200);
    }

    @Test
    void goesRoundWithThirtyTwoBits() {
        clock.hear(0xFFFF_FFF0L, millis(0));
        assertThat(clock.millis(millis(0x20))).isEqualTo(0x10);

        clock.hear(0x30, millis(0x45));
        assertThat(clock.millis(millis(0x45))).isEqualTo(0x30);
    }

    @Property
    void neverRunsAheadOfThePayload(
            @ForAll @LongRange(min = 0, max = 0xFFFF_FFFFL) long start,
            @ForAll @IntRange(max = 1_900) int delay,
            @ForAll @IntRange(max = 1_900) int otherDelay) {
        PayloadClock fresh = new PayloadClock();
        fresh.hear(start, millis(delay));
        fresh.hear(start + 100 & 0xFFFF_FFFFL, millis(100 + otherDelay));

        long now = 100 + Math.max(delay, otherDelay);
        long behind = start + now - fresh.millis(millis(now)) & 0xFFFF_FFFFL;

        assertThat(behind).isBetween(0L, 2_000L);
    }

    private static long millis(long millis) {
        return millis * 1_000_000;
    }
}
