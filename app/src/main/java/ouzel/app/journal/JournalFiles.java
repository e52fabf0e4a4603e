package ouzel.app.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.text.Normalizer;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.FileTrouble;
import ouzel.app.exit.Refusal;

/**
 * Makes journal files: one per sortie, named after its start in UTC and its site, never over another one.
 *
 * <p>Real sorties and rehearsals have a directory each, and a flag in the header besides.
 */
public final class JournalFiles {
    /** How a journal's name ends. */
    public static final String SUFFIX = ".ouzel";

    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH-mm-ss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final int LONGEST_SITE = 40;
    private static final int MOST_OF_ONE_NAME = 100;

    private JournalFiles() {}

    /**
     * A journal that was just made, its header safely written.
     *
     * @param file where it is
     * @param recorder what writes it
     */
    public record Opened(Path file, Recorder recorder) {}

    /** Where journals go unless the operator says otherwise, below the user's home directory {@code home}. */
    public static Path directory(Path home, boolean rehearsal) {
        return home.resolve(".ouzel").resolve(rehearsal ? "rehearsals" : "journals");
    }

    /**
     * Makes a journal that a thread of its own writes.
     *
     * @param directory made if it is not there
     * @param site the site's name, as part of the file's name
     * @param desk runs what the recorder has to tell
     * @param failed told once, on {@code desk}, in a sentence, if the journal cannot be written any more
     * @throws Refusal if the file cannot be made
     */
    public static Opened threaded(
            Path directory, JournalHeader header, String site, Executor desk, Consumer<String> failed) throws Refusal {
        FileStore store = create(directory, header, site);
        return new Opened(Path.of(store.name()), new JournalWriter(store, desk, failed));
    }

    /** The same, written by the thread that appends: for sorties in virtual time. */
    public static Opened direct(Path directory, JournalHeader header, String site, Consumer<String> failed)
            throws Refusal {
        FileStore store = create(directory, header, site);
        return new Opened(Path.of(store.name()), new DirectRecorder(store, failed));
    }

    /**
     * The journal of a rehearsal that follows from a seed, written by the thread that appends. One that stood there is
     * replaced: it can be flown again at any time.
     */
    public static Opened reproducible(Path file, JournalHeader header, Consumer<String> failed) throws Refusal {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Files.deleteIfExists(file);
            FileStore store = FileStore.create(file);
            begin(store, header);
            return new Opened(file, new DirectRecorder(store, failed));
        } catch (IOException trouble) {
            throw new Refusal(
                    ExitCode.NOT_WRITABLE,
                    "The journal " + file + " cannot be made: " + FileTrouble.words(trouble)
                            + "; name a directory you can write with --out DIR.",
                    trouble);
        }
    }

    private static FileStore create(Path directory, JournalHeader header, String site) throws Refusal {
        try {
            Files.createDirectories(directory);
            FileStore store = createUnused(directory, STAMP.format(header.created()) + "_" + fileName(site));
            begin(store, header);
            forceDirectory(directory);
            return store;
        } catch (IOException trouble) {
            throw new Refusal(
                    ExitCode.NOT_WRITABLE,
                    "No journal can be made in " + directory + ": " + FileTrouble.words(trouble)
                            + "; name a directory you can write with --journal DIR.",
                    trouble);
        }
    }

    private static void begin(JournalStore store, JournalHeader header) throws IOException {
        try {
            store.write(ByteBuffer.wrap(header.write()));
            store.force();
        } catch (IOException trouble) {
            store.close();
            throw trouble;
        }
    }

    private static FileStore createUnused(Path directory, String name) throws IOException {
        for (int i = 1; i < MOST_OF_ONE_NAME; i++) {
            try {
                return FileStore.create(directory.resolve(i == 1 ? name + SUFFIX : name + "-" + i + SUFFIX));
            } catch (FileAlreadyExistsException taken) {
                // Two desks were opened in one second: the next name is tried.
                continue;
            }
        }
        throw new FileAlreadyExistsException(name + SUFFIX);
    }

    /** Makes the new name itself durable, where directories can be opened at all. */
    private static void forceDirectory(Path directory) {
        try (FileChannel channel = FileChannel.open(directory, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notPossibleHere) {
            // Some systems cannot open a directory; there the name is as safe as the system makes it.
            return;
        }
    }

    /** {@code site} as part of a file name: plain letters, digits and dashes, at most {@value #LONGEST_SITE}. */
    static String fileName(String site) {
        String plain = Normalizer.normalize(site, Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-");
        String cut = plain.substring(0, Math.min(plain.length(), LONGEST_SITE)).replaceAll("^-+|-+$", "");
        return cut.isEmpty() ? "unnamed" : cut;
    }
}
