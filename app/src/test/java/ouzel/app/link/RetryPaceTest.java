package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RetryPaceTest {
    private static final long MILLISECOND = 1_000_000;

    private final RetryPace pace = new RetryPace();

    @Test
    void thePauseGrowsToTwoSecondsAndStaysThere() {
        assertThat(List.of(failure(0), failure(0), failure(0), failure(0), failure(0)))
                .containsExactly(500L, 1_000L, 2_000L, 2_000L, 2_000L);
    }

    @Test
    void thePauseStartsOverAfterALineThatLasted() {
        failure(0);
        failure(0);
        pace.opened(0);

        assertThat(pace.pauseAfterLoss(RetryPace.LASTING_NANOS)).isEqualTo(500 * MILLISECOND);
    }

    @Test
    void thePauseKeepsGrowingAfterALineThatDidNotLast() {
        failure(0);
        pace.opened(0);

        assertThat(pace.pauseAfterLoss(RetryPace.LASTING_NANOS - 1)).isEqualTo(1_000 * MILLISECOND);
    }

    @Test
    void linesThatAreLostAtOnceAreOpenedFourTimesInTenSecondsAtMost() {
        List<Long> openings = openingsOfALineThatIsLostAfter(0, 60_000);

        assertThat(openings).hasSizeGreaterThan(12);
        for (int i = RetryPace.MOST_OPENINGS; i < openings.size(); i++) {
            assertThat(openings.get(i) - openings.get(i - RetryPace.MOST_OPENINGS))
                    .isGreaterThanOrEqualTo(RetryPace.WINDOW_NANOS);
        }
    }

    @Test
    void aLineThatLastsSixSecondsIsAlwaysBackAfterHalfASecond() {
        List<Long> openings = openingsOfALineThatIsLostAfter(6_000, 60_000);

        for (int i = 1; i < openings.size(); i++) {
            assertThat(openings.get(i) - openings.get(i - 1)).isEqualTo(6_500 * MILLISECOND);
        }
    }

    private long failure(long nowNanos) {
        return pace.pauseAfterFailure(nowNanos) / MILLISECOND;
    }

    private List<Long> openingsOfALineThatIsLostAfter(long lifeMillis, long endMillis) {
        List<Long> openings = new ArrayList<>();
        long nowNanos = 0;
        while (nowNanos < endMillis * MILLISECOND) {
            openings.add(nowNanos);
            pace.opened(nowNanos);
            nowNanos += lifeMillis * MILLISECOND;
            nowNanos += pace.pauseAfterLoss(nowNanos);
        }
        return openings;
    }
}
