package ouzel.app.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

final class SeriesTest {
    @Test
    void aLongerSeriesLeavesTheShorterOneAsItWas() {
        Series shorter = Series.empty().append(List.of(1, 2));
        Series longer = shorter.append(List.of(3));

        assertThat(shorter.toArray()).containsExactly(1, 2);
        assertThat(longer.toArray()).containsExactly(1, 2, 3);
    }

    @Test
    void aSeriesLengthenedTwiceGivesTwoSeriesOfTheirOwn() {
        Series stem = Series.empty().append(List.of(1, 2));

        Series left = stem.append(List.of(3, 4));
        Series right = stem.append(List.of(5));

        assertThat(left.toArray()).containsExactly(1, 2, 3, 4);
        assertThat(right.toArray()).containsExactly(1, 2, 5);
    }

    @Test
    void theEmptySeriesIsNeverWrittenTo() {
        Series.empty().append(List.of(7));

        assertThat(Series.empty().append(List.of(8)).toArray()).containsExactly(8);
        assertThat(Series.empty().length()).isZero();
    }

    @Test
    void growsBeyondAnyFirstSize() {
        Series series = Series.empty();
        for (int i = 0; i < 500; i++) {
            series = series.append(Collections.nCopies(10, i));
        }

        assertThat(series.length()).isEqualTo(5_000);
        assertThat(series.at(4_999)).isEqualTo(499);
        assertThat(series.at(10)).isEqualTo(1);
    }

    @Test
    void noSampleBeyondItsEndCanBeRead() {
        Series stem = Series.empty().append(List.of(1));
        stem.append(List.of(2));

        assertThatThrownBy(() -> stem.at(1)).isInstanceOf(IndexOutOfBoundsException.class);
    }
}
