package ouzel.simulator.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class PneumaticsTest {
    private static final double ROOM_KELVIN = 293.15;

    /** Mechanics of a cylinder without friction, recomputed; bore, rod mm, kPa, N out, N in. */
    @ParameterizedTest
    @CsvSource({
        "16, 6, 800, 160.85, 138.23",
        "20, 8, 600, 188.50, 158.34",
        "25, 10, 600, 294.52, 247.40",
        "32, 12, 600, 482.55, 414.69"
    })
    void forcesAreAreaTimesPressure(double bore, double rod, double kilopascals, double out, double in) {
        assertThat(Pneumatics.thrustNewtons(bore, kilopascals)).isCloseTo(out, within(0.005));
        assertThat(Pneumatics.pullNewtons(bore, rod, kilopascals)).isCloseTo(in, within(0.006));
    }

    /** Mechanics, recomputed; bore, stroke mm, swept mL, free mL at 600 kPa. */
    @ParameterizedTest
    @CsvSource({"20, 100, 31.416, 217.45", "25, 150, 73.631, 509.64", "32, 100, 80.425, 556.66"})
    void gasOfAStrokeIsCountedAtAmbientPressure(double bore, double stroke, double swept, double free) {
        assertThat(Pneumatics.sweptMillilitres(bore, stroke)).isCloseTo(swept, within(0.0005));
        assertThat(Pneumatics.freeMillilitres(bore, stroke, 600)).isCloseTo(free, within(0.01));
    }

    /** Density from the full equation of state of Span and Wagner 1996; mL, kPa, g; tolerance 0.1 %. */
    @ParameterizedTest
    @CsvSource({"31.416, 600, 0.41346", "73.631, 600, 0.96904", "20.106, 800, 0.34407"})
    void aStrokeTakesTheMassOfARealGas(double millilitres, double kilopascals, double grams) {
        assertThat(Pneumatics.carbonDioxideGrams(millilitres, kilopascals, ROOM_KELVIN))
                .isCloseTo(grams, withinPercentage(0.1));
    }

    /** ASABE S313.3: cones of 20.27 and 12.83 mm base, 323 and 130 mm2; MPa, N, N recomputed. */
    @ParameterizedTest
    @CsvSource({"0.3, 96.81, 38.79", "1.0, 322.70, 129.28", "2.0, 645.40, 258.57", "3.0, 968.10, 387.85"})
    void coneForceIsIndexTimesBaseArea(double index, double bigCone, double smallCone) {
        assertThat(Pneumatics.coneNewtons(index, 20.27)).isCloseTo(bigCone, within(0.02));
        assertThat(Pneumatics.coneNewtons(index, 12.83)).isCloseTo(smallCone, within(0.02));
    }

    @Test
    void refusesPressureGivenInPascals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Pneumatics.thrustNewtons(20, 600_000))
                .withMessageContaining("gaugeKilopascals : 600000.0");
    }
}
