package ouzel.simulator.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CoilTest {
    private final Coil coil = new Coil(24, 0.12);

    /** Exponential rise, 12 V, 24 ohm, 0.12 H, recomputed; time constants, A. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.196735", "1, 0.316060", "2, 0.432332", "3, 0.475106", "5, 0.496631"})
    void currentRisesExponentially(double timeConstants, double amperes) {
        double seconds = timeConstants * coil.timeConstantSeconds();

        assertThat(coil.timeConstantSeconds()).isCloseTo(0.005, within(1e-15));
        assertThat(coil.risingAmperes(12, seconds)).isCloseTo(amperes, within(5e-7));
    }

    /** The same coil: 0.3 A at 4.58145 ms. */
    @Test
    void theTimeToACurrentIsTheReverse() {
        assertThat(coil.secondsToReach(0.3, 12)).isCloseTo(4.58145e-3, within(5e-9));
        assertThat(coil.risingAmperes(12, coil.secondsToReach(0.3, 12))).isCloseTo(0.3, within(1e-12));
    }

    /** Exponential decay: 0.6738 % is left after five time constants. */
    @Test
    void aDiodeLetsTheCurrentDie() {
        assertThat(coil.fallingAmperes(1, 0.025)).isCloseTo(0.006738, within(5e-7));
    }

    @Test
    void aCurrentAboveTheSettledOneIsNeverReached() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> coil.secondsToReach(0.5, 12))
                .withMessageContaining("amperes : 0.5");
    }
}
