package ouzel.simulator.profile;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import java.util.TreeMap;
import ouzel.simulator.plant.PayloadProfile;

/** Reads payload profiles from property files in UTF-8. Thread: any. */
public final class ProfileFile {
    private static final String REFERENCE = "/ouzel/simulator/plant/reference-payload.properties";

    private ProfileFile() {}

    /**
     * Reads a profile and leaves {@code stream} open.
     *
     * @throws IOException if reading fails
     * @throws IllegalArgumentException if the file is no complete profile; see {@link PayloadProfile#from}
     */
    public static PayloadProfile read(InputStream stream) throws IOException {
        Properties properties = new Properties();
        properties.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
        TreeMap<String, String> figures = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> figures.put(key, properties.getProperty(key)));
        return PayloadProfile.from(figures);
    }

    /** The reference payload, which this module carries along. */
    public static PayloadProfile reference() {
        try (InputStream stream = ProfileFile.class.getResourceAsStream(REFERENCE)) {
            if (stream == null) {
                throw new IllegalStateException(REFERENCE + " : missing (expected: on the class path)");
            }
            return read(stream);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(REFERENCE + " cannot be read", unreadable);
        }
    }
}
