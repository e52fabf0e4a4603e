package ouzel.app.screen.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import ouzel.app.estimate.Series;

class ColumnsTest {
    @Test
    void aShortStretchKeepsEverySample() {
        Columns columns = Columns.of(Series.empty().append(List.of(3, 1, 4, 1, 5)), 100, 10, 0, 1, 300);

        assertThat(columns.count()).isEqualTo(5);
        assertThat(columns.value(4)).isEqualTo(0.5);
        assertThat(columns.seconds(4)).isEqualTo(0.04);
    }

    @Test
    void aSpikeOfOneSampleIsNeverLost() {
        Series flat = Series.empty().append(Collections.nCopies(50_000, 7));
        Series spiked = flat.append(List.of(900)).append(Collections.nCopies(9_999, 7));
        Columns columns = Columns.of(spiked, 100, 1, 0, 600, 300);

        assertThat(columns.count()).isLessThanOrEqualTo(600);
        assertThat(greatest(columns)).isEqualTo(900);
    }

    @Test
    void timeNeverRunsBackwards() {
        Series zigzag = Series.empty();
        for (int i = 0; i < 5_000; i++) {
            zigzag = zigzag.append(List.of(i * 31 % 100));
        }
        Columns columns = Columns.of(zigzag, 100, 1, 0, 50, 77);

        for (int i = 1; i < columns.count(); i++) {
            assertThat(columns.seconds(i)).isGreaterThanOrEqualTo(columns.seconds(i - 1));
        }
    }

    @Test
    void onlyTheWindowIsKept() {
        Series series = Series.empty().append(Collections.nCopies(1_000, 1));
        Columns columns = Columns.of(series, 100, 1, 2, 3, 300);

        assertThat(columns.seconds(0)).isEqualTo(2);
        assertThat(columns.seconds(columns.count() - 1)).isEqualTo(3);
    }

    @Test
    void samplesThatHaveNotComeAreLeftOut() {
        Columns columns = Columns.of(Series.of(new int[] {5, -1, -1, 6}), 2_000, 1, 0, 1, 300);

        assertThat(columns.count()).isEqualTo(2);
        assertThat(columns.value(1)).isEqualTo(6);
    }

    @Test
    void anEmptySeriesGivesNothing() {
        assertThat(Columns.of(Series.empty(), 100, 1, 0, 30, 300).count()).isZero();
    }

    private static double greatest(Columns columns) {
        double most = 0;
        for (int i = 0; i < columns.count(); i++) {
            most = Math.max(most, columns.value(i));
        }
        return most;
    }
}
