package ouzel.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.Handler;
import java.util.logging.LogManager;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slf4j.LoggerFactory;

class LogTest {
    @TempDir
    Path home;

    @AfterEach
    void giveTheLogBack() throws Exception {
        for (Handler handler : Logger.getLogger("").getHandlers()) {
            handler.close();
        }
        LogManager.getLogManager().readConfiguration();
    }

    @Test
    void whatIsLoggedStandsInTheFileWithItsTrace() throws Exception {
        Path file = new Home(home).log();

        assertThat(Log.open(file)).isEmpty();
        LoggerFactory.getLogger("ouzel.test").error("It broke", new IllegalStateException("inside"));

        assertThat(Files.readString(file)).contains("SEVERE ouzel.test").contains("IllegalStateException: inside");
    }

    @Test
    void aLogThatCannotBeWrittenIsASentenceNotATrace() throws Exception {
        Path file = Files.writeString(home.resolve("taken"), "x").resolve("ouzel.log");

        assertThat(Log.open(file)).startsWith("No log is written: " + file);
    }
}
