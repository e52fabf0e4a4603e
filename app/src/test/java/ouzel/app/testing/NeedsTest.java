package ouzel.app.testing;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.opentest4j.AssertionFailedError;
import org.opentest4j.TestAbortedException;

class NeedsTest {
    @TempDir
    private Path folder;

    @Test
    void aMissingToolSetsTheTestAside() {
        assertThatThrownBy(() -> Needs.tool("wiring", Map.of("PATH", folder.toString())))
                .isInstanceOf(TestAbortedException.class)
                .hasMessageContaining("needs the program wiring");
    }

    @Test
    void aMissingToolFailsTheTestOnTheBuildServer() {
        assertThatThrownBy(() -> Needs.tool("wiring", Map.of("PATH", folder.toString(), "CI", "true")))
                .isInstanceOf(AssertionFailedError.class)
                .hasMessageContaining("needs the program wiring");
    }

    @Test
    void aToolThatIsThereIsFine() throws IOException {
        Path tool = Files.createFile(folder.resolve("wiring"));
        if (!tool.toFile().setExecutable(true)) {
            throw new IOException(tool + " cannot be made a program");
        }

        assertThatCode(() -> Needs.tool("wiring", Map.of("PATH", folder.toString(), "CI", "true")))
                .doesNotThrowAnyException();
    }
}
