package ouzel.simulator.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class StandardAtmosphereTest {
    /** US Standard Atmosphere 1976, Table I, by geopotential height (from memory, recomputed). */
    @ParameterizedTest
    @CsvSource({
        "0, 288.150, 101325.0, 1.22500",
        "500, 284.900, 95460.8, 1.16727",
        "1000, 281.650, 89874.6, 1.11164",
        "1500, 278.400, 84556.0, 1.05807",
        "2000, 275.150, 79495.2, 1.00649",
        "3000, 268.650, 70108.5, 0.90912",
        "5000, 255.650, 54019.9, 0.73612"
    })
    void agreesWithTheTableOfTheStandardAtmosphere(double metres, double kelvin, double pascals, double density) {
        assertThat(StandardAtmosphere.kelvin(metres)).isCloseTo(kelvin, within(0.001));
        assertThat(StandardAtmosphere.pascals(metres)).isCloseTo(pascals, within(0.1));
        assertThat(StandardAtmosphere.kilogramsPerCubicMetre(metres)).isCloseTo(density, within(1e-5));
    }

    /** US Standard Atmosphere 1976, equation 19 (from memory, recomputed). */
    @ParameterizedTest
    @CsvSource({"0, 0", "1000, 1000.157", "5000, 5003.936"})
    void geometricHeightIsALittleMoreThanGeopotential(double geopotential, double geometric) {
        assertThat(StandardAtmosphere.geometricMetres(geopotential)).isCloseTo(geometric, within(0.001));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 11_000.1, Double.NaN})
    void refusesHeightsOutsideTheLayer(double metres) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StandardAtmosphere.pascals(metres))
                .withMessageContaining("geopotentialMetres : " + metres)
                .withMessageContaining("0.0 to 11000.0");
    }
}
