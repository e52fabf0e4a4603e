package ouzel.simulator.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ouzel.simulator.physics.GasVolume.Reference;

final class GasVolumeTest {
    /** Ideal gas law, recomputed; the names of the conditions are from memory. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 30, 100000, 0.485323 0.477184 0.469045 0.444628 0.450520",
        "0.5, 5, 84556.0, 0.447253 0.439753 0.432252 0.409751 0.415180",
        "1.0, 20, 95461, 0.958196 0.942127 0.926058 0.877851 0.889482",
        "0.5, -10, 70108.5, 0.391972 0.385399 0.378826 0.359105 0.363864",
        "2.0, 35, 101325, 1.935097 1.902645 1.870193 1.772838 1.796328"
    })
    void carriesVolumesToEveryReference(double volume, double celsius, double pascals, String expected) {
        double[] volumes = Arrays.stream(expected.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        for (Reference reference : Reference.values()) {
            assertThat(GasVolume.at(reference, volume, celsius, pascals))
                    .as(reference.words())
                    .isCloseTo(volumes[reference.ordinal()], withinPercentage(1e-3));
        }
    }

    /** CODATA 2018: 22.413 969 54 L/mol at 0 °C and 101.325 kPa, 22.710 954 64 L/mol at 0 °C and 100 kPa. */
    @Test
    void molarVolumesAreThoseOfCodata() {
        assertThat(Reference.NORMAL_0C.molarLitres()).isCloseTo(22.41396954, within(1e-7));
        assertThat(Reference.CHEMISTRY_0C.molarLitres()).isCloseTo(22.71095464, within(1e-7));
        assertThat(Reference.AMBIENT_AIR_25C.molarLitres()).isCloseTo(24.46540, within(1e-5));
    }

    /** Ideal gas law between two heights of the standard atmosphere, recomputed. */
    @Test
    void aBagGrowsWhenItClimbs() {
        double amount = GasVolume.at(Reference.NORMAL_0C, 0.50, 15, 95_461);

        assertThat(GasVolume.from(Reference.NORMAL_0C, amount, 15, 89_875)).isCloseTo(0.5311, within(5e-5));
    }

    @Test
    void refusesAPressureGivenInKilopascals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GasVolume.at(Reference.NORMAL_0C, 1, 20, 101.325))
                .withMessageContaining("pascals : 101.325");
    }
}
