package ouzel.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClosestTest {
    @ParameterizedTest
    @CsvSource({"desk, desk, 0", "dsk, desk, 1", "dekk, desk, 1", "edsk, desk, 1", "desks, desk, 1", "'', key, 3"})
    void countsLettersToAddDropReplaceOrSwap(String from, String to, int slips) {
        assertThat(Closest.slips(from, to)).isEqualTo(slips);
        assertThat(Closest.slips(to, from)).isEqualTo(slips);
    }

    @Test
    void namesTheNearestWordAndNothingIfNoneIsNear() {
        assertThat(Closest.of("por", List.of("key", "ports", "desk"))).contains("ports");
        assertThat(Closest.of("bottle", List.of("key", "ports", "desk"))).isEmpty();
    }
}
