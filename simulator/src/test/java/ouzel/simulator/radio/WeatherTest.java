package ouzel.simulator.radio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

final class WeatherTest {
    @Test
    void burstsShorterThanChanceAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Weather(0.5, 1.9, 0, 0, 0, 0, 0, 0, 0, List.of()))
                .withMessageContaining("meanBurst : 1.9 (expected: 2.0 to 10000)");
    }

    @Test
    void ratiosOutsideZeroToOneAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Weather(0, 1, 1.1, 0, 0, 0, 0, 0, 0, List.of()))
                .withMessageContaining("duplicateRatio : 1.1");
    }

    @Test
    void anOutageHoldsFromItsStartAndNotAtItsEnd() {
        assertThat(Weather.OUTAGE.isOut(29_999)).isFalse();
        assertThat(Weather.OUTAGE.isOut(30_000)).isTrue();
        assertThat(Weather.OUTAGE.isOut(41_999)).isTrue();
        assertThat(Weather.OUTAGE.isOut(42_000)).isFalse();
    }

    @Test
    void anOutageThatEndsBeforeItStartsIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Weather.Outage(10, 9))
                .withMessageContaining("untilMillis : 9");
    }
}
