package ouzel.app.exit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class ExitCodeTest {
    @Test
    void everyEndingHasACodeOfItsOwnThatAShellCanCarry() {
        assertThat(Arrays.stream(ExitCode.values()).map(ExitCode::code))
                .doesNotHaveDuplicates()
                .allMatch(code -> code >= 0 && code < 126);
    }

    @Test
    void theCodesThatOthersRelyOnStayAsTheyAre() {
        assertThat(ExitCode.OK.code()).isZero();
        assertThat(ExitCode.SAMPLE_NOT_ACCEPTED.code()).isEqualTo(1);
        assertThat(ExitCode.USAGE.code()).isEqualTo(2);
        assertThat(ExitCode.JOURNAL_CUT.code()).isEqualTo(7);
        assertThat(ExitCode.INTERNAL.code()).isEqualTo(70);
    }
}
