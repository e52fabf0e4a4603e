package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.interval.BinomialConfidenceInterval;
import org.apache.commons.statistics.interval.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionTest {
    /** Newcombe, Statist. Med. 17 (1998) 857, Table I, method 3; from memory. */
    @ParameterizedTest
    @CsvSource({"81, 263, 0.2553, 0.3662", "15, 148, 0.0624, 0.1605", "0, 20, 0.0000, 0.1611", "1, 29, 0.0061, 0.1718"})
    void agreesWithThePublishedIntervals(long successes, long cases, double low, double high) {
        Proportion proportion = Proportion.of(successes, cases);

        assertThat(proportion.low()).isEqualTo(low, within(5e-5));
        assertThat(proportion.high()).isEqualTo(high, within(5e-5));
    }

    @ParameterizedTest
    @CsvSource({
        "5, 5, 0.565518, 1.0",
        "10, 10, 0.722467, 1.0",
        "9, 10, 0.595850, 0.982124",
        "19, 20, 0.763869, 0.991119",
        "30, 30, 0.886487, 1.0",
    })
    void agreesWithIntervalsComputedElsewhere(long successes, long cases, double low, double high) {
        Proportion proportion = Proportion.of(successes, cases);

        assertThat(proportion.low()).isEqualTo(low, within(1e-6));
        assertThat(proportion.high()).isEqualTo(high, within(1e-6));
    }

    @Test
    void agreesWithAStatisticsLibraryForEveryShareOfUpToSixtyCases() {
        for (int cases = 1; cases <= 60; cases++) {
            for (int successes = 0; successes <= cases; successes++) {
                Interval known = BinomialConfidenceInterval.WILSON_SCORE.fromErrorRate(cases, successes, 0.05);
                Proportion proportion = Proportion.of(successes, cases);

                assertThat(proportion.low()).isEqualTo(known.getLowerBound(), within(1e-12));
                assertThat(proportion.high()).isEqualTo(known.getUpperBound(), within(1e-12));
            }
        }
    }

    @Test
    void saysNothingWithoutACase() {
        assertThat(Proportion.of(0, 0)).isEqualTo(new Proportion(Double.NaN, Double.NaN, Double.NaN));
    }
}
