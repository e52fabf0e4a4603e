package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SilenceWatchTest {
    private static final long WAITED = 100_000_000;
    private static final long HASTY = 50_000;

    private final SilenceWatch watch = new SilenceWatch();

    @Test
    void aQuietLineIsNotGoneHoweverLongItIsQuiet() {
        for (int read = 0; read < 10_000; read++) {
            assertThat(watch.isGone(0, WAITED)).isFalse();
        }
    }

    @Test
    void anErrorMeansGone() {
        assertThat(watch.isGone(-1, WAITED)).isTrue();
    }

    @Test
    void threeEmptyReadsThatDidNotWaitMeanGone() {
        assertThat(watch.isGone(0, HASTY)).isFalse();
        assertThat(watch.isGone(0, HASTY)).isFalse();

        assertThat(watch.isGone(0, HASTY)).isTrue();
    }

    @Test
    void aReadThatWaitedOrBroughtBytesStartsTheCountAgain() {
        watch.isGone(0, HASTY);
        watch.isGone(0, HASTY);
        watch.isGone(0, WAITED);
        watch.isGone(0, HASTY);
        watch.isGone(0, HASTY);
        watch.isGone(5, HASTY);

        assertThat(watch.isGone(0, HASTY)).isFalse();
    }
}
