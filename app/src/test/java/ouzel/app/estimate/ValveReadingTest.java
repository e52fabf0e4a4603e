package ouzel.app.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Reading a coil's current. The rise is i(t) = V/R (1 - exp(-t R/L)) with V = 12 V, R = 24 ohm, L = 0.12 H: a time
 * constant of 5 ms and 0.5 A at the end: any text on circuits.
 */
final class ValveReadingTest {
    private static final int SAMPLES = 200;

    @Test
    void aRiseWithoutADipMovedNothing() {
        ValveReading reading = ValveReading.of(Series.of(rise()));

        assertThat(reading.moved()).isFalse();
        assertThat(reading.steadyMilliamps()).isCloseTo(500, within(1.0));
    }

    @Test
    void noiseAloneIsNoDip() {
        int[] noisy = rise();
        for (int i = 0; i < noisy.length; i++) {
            noisy[i] += (i * 7 % 13) - 6;
        }

        assertThat(ValveReading.of(Series.of(noisy)).moved()).isFalse();
    }

    @Test
    void aSeatingPlungerIsSeenWithItsTimeAndDepth() {
        int[] moved = rise();
        for (int i = 11; i < 30; i++) {
            moved[i] -= 140 - Math.abs(i - 20) * 14;
        }

        ValveReading reading = ValveReading.of(Series.of(moved));

        assertThat(reading.moved()).isTrue();
        assertThat(reading.dipMillis()).isCloseTo(10, within(1.0));
        assertThat(reading.dipMilliamps()).isGreaterThan(15);
    }

    @Test
    void anOpenCoilMovedNothing() {
        assertThat(ValveReading.of(Series.of(new int[SAMPLES])).moved()).isFalse();
    }

    @Test
    void aCaptureOfNothingIsReadWithoutHarm() {
        assertThat(ValveReading.of(Series.empty()).moved()).isFalse();
    }

    private static int[] rise() {
        return IntStream.range(0, SAMPLES)
                .map(i -> (int) Math.round(500 * (1 - Math.exp(-i * 0.5 / 5))))
                .toArray();
    }
}
