package ouzel.simulator.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class CarbonDioxideTest {
    private static final double ZERO_CELSIUS = 273.15;

    /** Span and Wagner 1996, equations 3.13 to 3.15, recomputed; columns °C, MPa, kg/m3, kg/m3; tolerance 1e-5. */
    @ParameterizedTest
    @CsvSource({
        "-56.5579999, 0.517962, 1178.53, 13.7614",
        "-20, 1.96959, 1031.660, 51.701",
        "-10, 2.64857, 982.897, 71.183",
        "0, 3.48503, 927.406, 97.644",
        "5, 3.96940, 896.007, 114.618",
        "10, 4.50219, 861.096, 135.157",
        "15, 5.08724, 821.187, 160.735",
        "20, 5.72919, 773.392, 194.204",
        "25, 6.43432, 710.471, 242.710",
        "30, 7.21357, 593.263, 345.003"
    })
    void agreesWithTheAncillaryEquations(double celsius, double megapascals, double liquid, double vapour) {
        double kelvin = celsius + ZERO_CELSIUS;

        assertThat(CarbonDioxide.saturationPascals(kelvin)).isCloseTo(megapascals * 1e6, withinPercentage(1e-3));
        assertThat(CarbonDioxide.liquidDensity(kelvin)).isCloseTo(liquid, withinPercentage(1e-3));
        assertThat(CarbonDioxide.vapourDensity(kelvin)).isCloseTo(vapour, withinPercentage(1.2e-3));
    }

    /** Full equation of state of Span and Wagner 1996, equal pressures and Gibbs energies; tolerance 0.1 %. */
    @ParameterizedTest
    @CsvSource({"0, 3.48514, 927.432, 97.647", "10, 4.50218, 861.120, 135.156", "20, 5.72905, 773.387, 194.202"})
    void agreesWithTheFullEquationOfState(double celsius, double megapascals, double liquid, double vapour) {
        double kelvin = celsius + ZERO_CELSIUS;

        assertThat(CarbonDioxide.saturationPascals(kelvin)).isCloseTo(megapascals * 1e6, withinPercentage(0.1));
        assertThat(CarbonDioxide.liquidDensity(kelvin)).isCloseTo(liquid, withinPercentage(0.1));
        assertThat(CarbonDioxide.vapourDensity(kelvin)).isCloseTo(vapour, withinPercentage(0.1));
    }

    /** Latent heat from the full equation of state, kJ/kg; tolerance 1 %. */
    @ParameterizedTest
    @CsvSource({"-20, 282.44", "-10, 258.62", "0, 230.89", "10, 197.15", "15, 176.65", "20, 152.00", "25, 119.65"})
    void boilingTakesTheHeatOfTheFullEquation(double celsius, double kilojoules) {
        assertThat(CarbonDioxide.latentHeat(celsius + ZERO_CELSIUS)).isCloseTo(kilojoules * 1e3, withinPercentage(1));
    }

    /** Density of the gas from the full equation of state; columns K, MPa, kg/m3, tolerance in %. */
    @ParameterizedTest
    @CsvSource({
        "273.15, 0.101325, 1.97681, 0.01",
        "293.15, 0.101325, 1.83934, 0.01",
        "298.15, 0.101325, 1.80797, 0.01",
        "293.15, 0.6, 11.1943, 0.05",
        "293.15, 1.0, 19.0985, 0.12",
        "300, 1.0, 18.5794, 0.15",
        "293.15, 2.0, 40.7727, 0.6"
    })
    void theVirialEquationIsNearTheFullOneAtRegulatedPressures(
            double kelvin, double megapascals, double density, double percent) {
        assertThat(CarbonDioxide.gasDensity(megapascals * 1e6, kelvin)).isCloseTo(density, withinPercentage(percent));
    }

    /** Low-density limit of the full equation of state, cm3/mol. */
    @ParameterizedTest
    @CsvSource({"253.15, -178.81", "293.15, -127.88", "298.15, -123.01", "303.15, -118.39"})
    void secondVirialIsTheLimitOfTheFullEquation(double kelvin, double cubicCentimetres) {
        assertThat(CarbonDioxide.secondVirial(kelvin)).isCloseTo(cubicCentimetres, within(0.2));
    }

    @Property(tries = 200)
    void densityAndPressureAreEachOthersReverse(
            @ForAll @DoubleRange(min = 1_000, max = 1_900_000) double pascals,
            @ForAll @DoubleRange(min = 254, max = 323) double kelvin) {
        double density = CarbonDioxide.gasDensity(pascals, kelvin);

        assertThat(CarbonDioxide.gasPascals(density, kelvin)).isCloseTo(pascals, withinPercentage(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {304.2, 216.5, 20})
    void thereIsNoVapourPressureOutsideTheTwoPhaseRange(double kelvin) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CarbonDioxide.saturationPascals(kelvin))
                .withMessageContaining("kelvin : " + kelvin);
    }
}
