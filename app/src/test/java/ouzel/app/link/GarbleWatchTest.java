package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import ouzel.protocol.frame.ParserCounts;

class GarbleWatchTest {
    private static final long SECOND = 1_000_000_000L;

    private final GarbleWatch watch = new GarbleWatch(0);
    private long good;
    private long bad;

    @Test
    void isSilentBeforeFiveSecondsAreOver() {
        assertThat(hear(0, 1_000, 5 * SECOND - 1)).isFalse();
    }

    @Test
    void tellsMoreBadFramesThanGoodOnesOnce() {
        assertThat(hear(9, 10, 5 * SECOND)).isTrue();
        assertThat(hear(9, 10, 10 * SECOND)).isFalse();
    }

    @Test
    void tellsAgainAfterTheLineWasReadable() {
        hear(0, 10, 5 * SECOND);
        hear(10, 0, 10 * SECOND);

        assertThat(hear(0, 10, 15 * SECOND)).isTrue();
    }

    @Test
    void halfOfTheFramesBadIsARadioAndNotAWrongSpeed() {
        assertThat(hear(10, 10, 5 * SECOND)).isFalse();
    }

    @Test
    void theNoiseOfPluggingInIsNotEnough() {
        assertThat(hear(0, GarbleWatch.FEWEST - 1, 5 * SECOND)).isFalse();
    }

    private boolean hear(long moreGood, long moreBad, long nowNanos) {
        good += moreGood;
        bad += moreBad;
        return watch.turnsGarbled(new ParserCounts(good, 0, bad, 0, 0), nowNanos);
    }
}
