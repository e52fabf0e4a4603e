package ouzel.simulator.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

final class NoiseTest {
    private static final int DRAWS = 100_000;

    /** Published first outputs of SplitMix64 from the state 1234567, as test suites of the generator give them. */
    @Test
    void drawsAreThoseOfSplitMix64() {
        long increment = 0x9E3779B97F4A7C15L;
        long state = 1_234_567;
        SplittableRandom reference = new SplittableRandom(state);

        assertThat(reference.nextLong()).isEqualTo(6_457_827_717_110_365_317L);
        assertThat(Noise.mixed(state + increment)).isEqualTo(6_457_827_717_110_365_317L);
        assertThat(Noise.mixed(state + 2 * increment)).isEqualTo(3_203_168_211_198_807_973L);
    }

    @Test
    void bellHasMeanZeroAndDeviationOne() {
        Noise noise = new Noise(1);
        double sum = 0;
        double squares = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            double value = noise.bell();
            sum += value;
            squares += value * value;
        }

        // Four standard errors: 4 / sqrt(100 000) for the mean; the variance's is smaller than 4 sqrt(2 / 100 000).
        assertThat(sum / DRAWS).isCloseTo(0, within(0.0127));
        assertThat(squares / DRAWS).isCloseTo(1, within(0.018));
    }

    @Test
    void uniformFillsItsRangeEvenly() {
        Noise noise = new Noise(2);
        int[] counts = new int[10];
        for (int draw = 0; draw < DRAWS; draw++) {
            counts[(int) noise.uniform(0, 10)]++;
        }

        // Binomial, n = 100 000, p = 0.1: standard deviation 95; five of them.
        assertThat(Arrays.stream(counts).boxed())
                .allSatisfy(count -> assertThat(count).isCloseTo(DRAWS / 10, within(475)));
    }

    @Test
    void splittingOffLeavesTheParentAsItWas() {
        Noise alone = new Noise(3);
        Noise parent = new Noise(3);
        Noise child = parent.split("child");
        child.nextLong();

        assertThat(parent.nextLong()).isEqualTo(alone.nextLong());
        assertThat(new Noise(3).split("child").nextLong())
                .isNotEqualTo(new Noise(3).split("other").nextLong());
    }
}
