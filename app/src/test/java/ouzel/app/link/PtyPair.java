package ouzel.app.link;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.awaitility.Awaitility;
import ouzel.app.testing.Needs;

/** Two serial lines that are wired to each other by a program outside of this one. */
final class PtyPair implements AutoCloseable {
    private final Process wiring;
    private final Path near;
    private final Path far;

    private PtyPair(Process wiring, Path near, Path far) {
        this.wiring = wiring;
        this.near = near;
        this.far = far;
    }

    /** Starts the wiring, with the lines' names in {@code folder}. */
    static PtyPair in(Path folder) {
        Needs.tool("socat");
        Path near = folder.resolve("near");
        Path far = folder.resolve("far");
        try {
            Process wiring = new ProcessBuilder("socat", "pty,raw,echo=0,link=" + near, "pty,raw,echo=0,link=" + far)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            Awaitility.await("the lines' names")
                    .atMost(Duration.ofSeconds(10))
                    .pollInterval(Duration.ofMillis(5))
                    .until(() -> Files.exists(near) && Files.exists(far));
            return new PtyPair(wiring, near, far);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Starts the wiring once more under the names that a pulled pair has left behind. */
    static PtyPair again(Path folder) {
        try {
            Files.delete(folder.resolve("near"));
            Files.delete(folder.resolve("far"));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return in(folder);
    }

    Port.Serial near() {
        return new Port.Serial(near.toString(), Port.Serial.USUAL_SPEED);
    }

    Port.Serial far() {
        return new Port.Serial(far.toString(), Port.Serial.USUAL_SPEED);
    }

    /** The far line as a file, for a test that writes bytes by hand. */
    Path farFile() {
        return far;
    }

    /** Both lines vanish, as when the plug is pulled. */
    void pull() {
        wiring.destroyForcibly();
    }

    @Override
    public void close() {
        pull();
    }
}
