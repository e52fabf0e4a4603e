package ouzel.app.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** What the build put into the program about itself. */
public final class BuildFacts implements IVersionProvider {
    private static final String RESOURCE = "build.properties";

    /** The program's version, for example "0.1.0"; not the protocol's. */
    public static String version() {
        try (InputStream source = BuildFacts.class.getResourceAsStream(RESOURCE)) {
            Properties facts = new Properties();
            facts.load(source);
            return facts.getProperty("version");
        } catch (IOException broken) {
            throw new UncheckedIOException(RESOURCE + " is part of the program and cannot be read", broken);
        }
    }

    @Override
    public String[] getVersion() {
        return new String[] {"ouzel " + version()};
    }
}
