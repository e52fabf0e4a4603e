package ouzel.simulator.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class SensorConverterTest {
    @Test
    void tenBitsKnowAThousandAndTwentyFourValues() {
        SensorConverter converter = SensorConverter.analogue(0, 5_000, 0, 0, new Noise(1));
        Set<Integer> seen = new HashSet<>();
        for (int value = -100; value <= 5_100; value++) {
            seen.add(converter.read(value));
            assertThat(converter.read(value)).isCloseTo(Math.max(0, Math.min(5_000, value)), within(3));
        }

        assertThat(seen).hasSize(1_024).contains(0, 5_000);
    }

    @Test
    void offsetShiftsAndNoiseSpreads() {
        SensorConverter converter = SensorConverter.digital(-1_000, 1_000, 20, 5, new Noise(2));
        double sum = 0;
        double squares = 0;
        for (int draw = 0; draw < 10_000; draw++) {
            int read = converter.read(100);
            sum += read;
            squares += (read - 120.0) * (read - 120.0);
        }

        assertThat(sum / 10_000).isCloseTo(120, within(0.25));
        assertThat(Math.sqrt(squares / 10_000)).isCloseTo(5, within(0.25));
    }

    @Test
    void valuesOutsideTheRangeClip() {
        SensorConverter converter = SensorConverter.digital(0, 1_800, 0, 0, new Noise(3));

        assertThat(converter.read(-50)).isZero();
        assertThat(converter.read(9_999)).isEqualTo(1_800);
    }
}
