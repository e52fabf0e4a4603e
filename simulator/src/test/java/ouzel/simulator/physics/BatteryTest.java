package ouzel.simulator.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class BatteryTest {
    /** Charge is current times time, recomputed: 2 200 mAh less 1.5 A for 20 min is 1 700 mAh. */
    @Test
    void chargeIsCurrentTimesTime() {
        assertThat(Battery.milliampHoursLeft(2_200, 1.5, 1_200)).isCloseTo(1_700, within(1e-9));
    }

    @Test
    void anEmptyPackStaysEmpty() {
        assertThat(Battery.milliampHoursLeft(10, 5, 3_600)).isZero();
    }

    /** Ohm's law: 12 V behind 75 mohm under 4 A is 11.7 V. */
    @Test
    void voltageSagsByOhmsLaw() {
        assertThat(Battery.loadedVolts(12, 4, 0.075)).isCloseTo(11.7, within(1e-12));
    }

    @Test
    void refusesANegativeCurrent() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Battery.loadedVolts(12, -1, 0.1))
                .withMessageContaining("amperes : -1.0 (expected: >= 0)");
    }
}
