package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ouzel.app.testing.Needs;

class SerialOpeningTest {
    @TempDir
    private Path folder;

    private final LinkLoop loop = new LinkLoop();
    private final LineLog console = new LineLog();

    @AfterEach
    void end() {
        loop.close();
    }

    @Test
    void aNameThatDoesNotExistIsNotThere() {
        String name = folder.resolve("nothing").toString();

        assertThat(failure(new Port.Serial(name, 57_600)))
                .isEqualTo("failed The serial line " + name + " is not there. Check the name and the plug.");
    }

    @Test
    void aPlainFileIsNotASerialLine() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.txt"), "no line");

        assertThat(failure(new Port.Serial(file.toString(), 57_600))).contains("is not a serial line");
    }

    @Test
    void aLineThatThisProgramHasOpenIsInUseByThisProgram() {
        try (PtyPair lines = PtyPair.in(folder)) {
            LineLog first = new LineLog();
            FrameLine.connect(loop, lines.near(), first);
            first.await("opened");

            assertThat(failure(lines.near())).contains("is already in use by this program");
        }
    }

    @Test
    void aLineThatAnotherProgramHoldsIsInUseByAnotherProgram() throws IOException {
        Needs.tool("flock");
        try (PtyPair lines = PtyPair.in(folder)) {
            Process other = new ProcessBuilder("flock", lines.farFile().toString(), "cat").start();
            other.getOutputStream().write('x');
            other.getOutputStream().flush();
            assertThat(other.getInputStream().read()).isEqualTo('x');

            assertThat(failure(lines.far())).contains("is in use by another program");
            other.destroyForcibly();
        }
    }

    @Test
    void theDeviceRefusesASpeedItDoesNotKnow() {
        try (PtyPair lines = PtyPair.in(folder)) {
            SerialDevice device = new SerialDevice(lines.near().name(), 12_345, false);

            assertThatThrownBy(device::open)
                    .isInstanceOf(LineFailure.class)
                    .hasMessageContaining("does not know a speed of 12345 baud");
        }
    }

    private String failure(Port.Serial port) {
        FrameLine.connect(loop, port, console);
        return console.await("failed");
    }
}
