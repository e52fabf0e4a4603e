package ouzel.app.field;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.awaitility.Awaitility;
import ouzel.app.link.Port;
import ouzel.app.testing.Needs;

/**
 * A cable between a serial line of this computer and something that listens on a TCP port: pulled and plugged in at
 * will, while what is at the far end goes on.
 */
final class Cable implements AutoCloseable {
    private final Path folder;
    private final int farPort;
    private Process wiring;
    private Path line;

    Cable(Path folder, int farPort) {
        Needs.tool("socat");
        this.folder = folder;
        this.farPort = farPort;
    }

    /** The name that the line has, or would have. */
    Port.Serial port(String name) {
        return new Port.Serial(folder.resolve(name).toString(), Port.Serial.USUAL_SPEED);
    }

    /** A search that finds every line of this cable, whatever its name. */
    Port.Search anywhere() {
        return Port.Search.parse("auto," + folder.resolve("line*"));
    }

    /** Plugs it in; the line appears under {@code name}. */
    void plug(String name) {
        line = folder.resolve(name);
        try {
            wiring = new ProcessBuilder("socat", "pty,raw,echo=0,link=" + line, "tcp:127.0.0.1:" + farPort)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        Awaitility.await("the line " + name)
                .atMost(Duration.ofSeconds(10))
                .pollInterval(Duration.ofMillis(2))
                .until(() -> Files.exists(line));
    }

    /** Pulls it out at once, whatever is under way. */
    void pull() {
        wiring.destroyForcibly();
        try {
            wiring.waitFor(10, TimeUnit.SECONDS);
            Files.deleteIfExists(line);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        if (wiring != null) {
            pull();
        }
    }
}
