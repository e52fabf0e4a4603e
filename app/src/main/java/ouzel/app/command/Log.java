package ouzel.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.FileHandler;
import java.util.logging.Handler;
import java.util.logging.LogManager;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;
import ouzel.app.exit.FileTrouble;

/**
 * Opens the log file; the terminal is for sentences, the log for details.
 *
 * <p>At {@value #LARGEST_BYTES} bytes the file starts anew. A second program that runs at the same time gets a file of
 * the same name with a number behind it.
 */
final class Log {
    private static final String SETTINGS = "logging.properties";
    private static final int LARGEST_BYTES = 5_000_000;

    private Log() {}

    /**
     * Sends everything that is logged from now on to {@code file}, and nothing to the terminal.
     *
     * @return why there will be no log, as a sentence; empty if there is one
     */
    static String open(Path file) {
        try (InputStream settings = Log.class.getResourceAsStream(SETTINGS)) {
            LogManager.getLogManager().readConfiguration(settings);
            Files.createDirectories(file.getParent());
            // A per cent sign means something in the pattern that the handler takes.
            String pattern = file.toString().replace("%", "%%");
            Handler handler = new FileHandler(pattern, LARGEST_BYTES, 1, true);
            handler.setFormatter(new SimpleFormatter());
            handler.setEncoding("UTF-8");
            Logger.getLogger("").addHandler(handler);
            return "";
        } catch (IOException trouble) {
            return "No log is written: " + file + ": " + FileTrouble.words(trouble) + ".";
        }
    }
}
