package ouzel.simulator.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RadioPathTest {
    /** ITU-R P.525-5, equation 5, recomputed; dB at 100 m, 1 km and 5 km. */
    @ParameterizedTest
    @CsvSource({
        "433, 65.178, 85.178, 99.157",
        "868, 71.218, 91.218, 105.198",
        "915, 71.676, 91.676, 105.656",
        "2400, 80.052, 100.052, 114.031",
        "2450, 80.231, 100.231, 114.211"
    })
    void freeSpaceLossIsThatOfEquationFive(double megahertz, double near, double middle, double far) {
        assertThat(RadioPath.freeSpaceLossDecibels(megahertz, 100)).isCloseTo(near, within(5e-4));
        assertThat(RadioPath.freeSpaceLossDecibels(megahertz, 1_000)).isCloseTo(middle, within(5e-4));
        assertThat(RadioPath.freeSpaceLossDecibels(megahertz, 5_000)).isCloseTo(far, within(5e-4));
    }

    /** ITU-R P.526 (from memory), exact form, recomputed; MHz, m before, m after, radius in m. */
    @ParameterizedTest
    @CsvSource({
        "433, 50, 50, 4.160", "868, 500, 500, 9.292", "2400, 2500, 2500, 12.496",
        "433, 200, 800, 10.525", "868, 200, 800, 7.434", "915, 200, 800, 7.240"
    })
    void firstFresnelZoneIsWidestInTheMiddle(double megahertz, double before, double after, double radius) {
        assertThat(RadioPath.firstFresnelRadiusMetres(megahertz, before, after)).isCloseTo(radius, within(6e-4));
    }

    @Test
    void refusesAFrequencyGivenInHertz() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RadioPath.freeSpaceLossDecibels(868e6, 1_000))
                .withMessageContaining("megahertz");
    }
}
