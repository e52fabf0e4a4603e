package ouzel.app.link;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.StreamSupport;

/** Names of serial lines that a person gave, with stars in them, made into the names that are there now. */
final class SerialNames {
    private static final String DESCRIPTION = "named on the command line";

    private SerialNames() {}

    /** {@code found} with what {@code patterns} match in front, each device once. */
    static SerialPorts.Found add(List<String> patterns, SerialPorts.Found found) {
        List<SerialPorts.Entry> all = new ArrayList<>();
        patterns.stream()
                .flatMap(pattern -> matching(pattern).stream())
                .map(name -> new SerialPorts.Entry(name, DESCRIPTION))
                .forEach(all::add);
        all.addAll(found.entries());
        Set<String> devices = new HashSet<>();
        return new SerialPorts.Found(
                all.stream().filter(entry -> devices.add(device(entry.name()))).toList(), found.trouble());
    }

    private static List<String> matching(String pattern) {
        if (!pattern.startsWith("/")) {
            return List.of(pattern);
        }
        int lastPart = pattern.lastIndexOf('/') + 1;
        Path folder = Path.of(pattern.substring(0, lastPart));
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (DirectoryStream<Path> names = Files.newDirectoryStream(folder, pattern.substring(lastPart))) {
            return StreamSupport.stream(names.spliterator(), false)
                    .filter(Files::exists)
                    .map(Path::toString)
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            // A folder that came and went, as folders of device names do.
            return List.of();
        }
    }

    /** What stands behind a name that may be a link. */
    private static String device(String name) {
        try {
            return Path.of(name).toRealPath().toString();
        } catch (IOException | InvalidPathException noFile) {
            // Not every system has its lines in the file system.
            return name;
        }
    }
}
