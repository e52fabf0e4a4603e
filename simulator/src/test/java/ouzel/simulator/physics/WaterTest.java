package ouzel.simulator.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class WaterTest {
    /** Tanaka et al. 2001, recomputed; tolerance 1e-4 kg/m3. */
    @ParameterizedTest
    @CsvSource({
        "0, 999.8428",
        "4, 999.9749",
        "5, 999.9668",
        "10, 999.7027",
        "15, 999.1026",
        "20, 998.2067",
        "25, 997.0470",
        "30, 995.6488",
        "40, 992.2152"
    })
    void densityIsTanakas(double celsius, double density) {
        assertThat(Water.kilogramsPerCubicMetre(celsius)).isCloseTo(density, within(1e-4));
    }

    /** Kell 1975 (from memory), an independent equation; the two agree to 0.004 kg/m3. */
    @ParameterizedTest
    @CsvSource({"0, 999.8395", "15, 999.0996", "25, 997.0449", "40, 992.2158"})
    void densityIsNearKells(double celsius, double density) {
        assertThat(Water.kilogramsPerCubicMetre(celsius)).isCloseTo(density, within(0.004));
    }

    /** Two metres of water of 1 000 kg/m3: 2 x 1 000 x 9.80665. */
    @Test
    void twoMetresOfWaterPressWithTwentyKilopascals() {
        assertThat(Water.hydrostaticPascals(2, 1_000)).isCloseTo(19_613.3, within(0.05));
    }

    @Test
    void aLitreOfWaterWeighsLessInAirThanItsMass() {
        double millilitres = Water.millilitresWeighedInAir(997.15, 20, 1.2);

        assertThat(millilitres).isCloseTo(1_000, within(0.01));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 40.01})
    void refusesIceAndHotWater(double celsius) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Water.kilogramsPerCubicMetre(celsius))
                .withMessageContaining("celsius : " + celsius);
    }
}
