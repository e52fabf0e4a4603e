package ouzel.app.testing;

import java.awt.GraphicsEnvironment;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * What a test needs from the computer it runs on. Where it is missing the test is set aside with one line that says so;
 * on the build server (environment CI=true) it fails.
 */
public final class Needs {
    private Needs() {}

    /** A program that can be started by its name. */
    public static void tool(String name) {
        tool(name, System.getenv());
    }

    static void tool(String name, Map<String, String> environment) {
        boolean isThere = Stream.of(environment.getOrDefault("PATH", "").split(File.pathSeparator))
                .map(folder -> Path.of(folder, name))
                .anyMatch(Files::isExecutable);
        if (!isThere) {
            missing("This test needs the program " + name + ", which is not installed here.", environment);
        }
    }

    /** A screen that windows can be opened on. */
    public static void display() {
        if (GraphicsEnvironment.isHeadless()) {
            missing("This test needs a display, and there is none here.", System.getenv());
        }
    }

    private static void missing(String sentence, Map<String, String> environment) {
        if (Boolean.parseBoolean(environment.get("CI"))) {
            Assertions.fail(sentence);
        }
        Assumptions.abort(sentence);
    }
}
