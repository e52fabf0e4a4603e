package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SerialTroubleTest {
    /** Error numbers of Linux (errno(3)) and, for 35, of macOS. */
    @ParameterizedTest
    @CsvSource({
        "13, true, NO_PERMISSION, group dialout",
        "11, true, IN_USE, in use by another program",
        "16, true, IN_USE, in use by another program",
        "35, true, IN_USE, in use by another program",
        "2, true, IN_USE, already in use by this program",
        "2, false, NOT_THERE, is not there",
        "19, true, NOT_THERE, is not there",
        "25, true, NOT_SUITABLE, does not know a speed of 57600 baud",
        "22, true, NOT_SUITABLE, is not a serial line",
        "99, true, OTHER, error 99",
    })
    void givesEachErrorItsOwnWords(int code, boolean exists, LineFailure.Cause cause, String words) {
        LineFailure failure = SerialTrouble.ofOpening("/dev/ttyUSB0", 57_600, code, exists);

        assertThat(failure.kind()).isEqualTo(cause);
        assertThat(failure).hasMessageContaining(words).hasMessageContaining("/dev/ttyUSB0");
    }

    @Test
    void readsDeniedAccessToANamedPortAsInUse() {
        LineFailure failure = SerialTrouble.ofOpening("COM3", 57_600, 5, false);

        assertThat(failure.kind()).isEqualTo(LineFailure.Cause.IN_USE);
    }

    @Test
    void namesFolderAndOptionWhereTheNativePartCannotBeLoaded() {
        assertThat(SerialTrouble.noNativePart())
                .contains(System.getProperty("java.io.tmpdir"))
                .contains("-DjSerialComm.library.path=");
    }
}
