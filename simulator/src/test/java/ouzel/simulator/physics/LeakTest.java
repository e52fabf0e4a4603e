package ouzel.simulator.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class LeakTest {
    /** Exponential decay of gauge pressure from 600 kPa, recomputed; time constant s, s, kPa. */
    @ParameterizedTest
    @CsvSource({"3600, 60, 590.083", "3600, 600, 507.889", "3600, 3600, 220.728", "600, 60, 542.902"})
    void gaugePressureFallsExponentially(double timeConstant, double seconds, double kilopascals) {
        assertThat(Leak.gaugeAfter(600, timeConstant, seconds)).isCloseTo(kilopascals, within(5e-4));
    }

    /** The same law: 600 to 570 kPa in 300 s is 5 848.718 s; the half-life of 3 600 s is 2 495.330 s. */
    @Test
    void twoReadingsGiveTheTimeConstant() {
        assertThat(Leak.timeConstantSeconds(600, 570, 300)).isCloseTo(5_848.718, within(5e-4));
        assertThat(Leak.halfLifeSeconds(3_600)).isCloseTo(2_495.330, within(5e-4));
    }

    @Test
    void aRisingPressureIsNoLeak() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Leak.timeConstantSeconds(570, 600, 300))
                .withMessageContaining("gaugeBefore : 570.0");
    }
}
