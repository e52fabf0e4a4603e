package ouzel.app.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.FileTrouble;
import ouzel.app.exit.Refusal;

/**
 * Reads one journal from its start, record by record, in a fixed amount of memory.
 *
 * <p>A file that was cut, or that is damaged somewhere, reads up to the last whole record before that place; {@link
 * #dropped()} then tells what stands behind it. Nothing behind a damaged record is used: with a gap, the fold could
 * arrive at a state that never was.
 *
 * <p>Thread: any, one at a time.
 */
public final class JournalReader implements AutoCloseable {
    private static final int WINDOW_LENGTH = 2 * JournalCodec.LONGEST_RECORD;

    private final Path file;
    private final FileChannel channel;
    private final ByteBuffer window;
    private final JournalHeader header;
    private long position;
    private boolean ended;
    private Optional<Dropped> dropped = Optional.empty();

    private JournalReader(Path file, FileChannel channel, ByteBuffer window, JournalHeader header) {
        this.file = file;
        this.channel = channel;
        this.window = window;
        this.header = header;
        this.position = window.position();
    }

    /**
     * Opens {@code file} and reads its header.
     *
     * @throws Refusal if the file cannot be read, is no journal, or is one of a newer format
     */
    public static JournalReader open(Path file) throws Refusal {
        FileChannel channel;
        try {
            channel = FileChannel.open(file, StandardOpenOption.READ);
        } catch (IOException trouble) {
            throw unreadable(file, trouble);
        }
        try {
            ByteBuffer window = ByteBuffer.allocate(WINDOW_LENGTH).order(ByteOrder.LITTLE_ENDIAN);
            fill(channel, window.limit(0));
            return new JournalReader(file, channel, window, JournalHeader.read(window, file.toString()));
        } catch (IOException trouble) {
            closeAfterFailure(channel, trouble);
            throw unreadable(file, trouble);
        } catch (Refusal refusal) {
            closeAfterFailure(channel, refusal);
            throw refusal;
        }
    }

    private static void closeAfterFailure(FileChannel channel, Exception failure) {
        try {
            channel.close();
        } catch (IOException alsoFailed) {
            failure.addSuppressed(alsoFailed);
        }
    }

    public JournalHeader header() {
        return header;
    }

    /**
     * The next whole record; empty at the end, or before a damaged or unfinished one.
     *
     * @throws Refusal if the disk fails while reading
     */
    public Optional<Entry> next() throws Refusal {
        while (!ended) {
            JournalCodec.Next next = JournalCodec.read(window);
            if (next instanceof JournalCodec.Next.Whole whole) {
                position += whole.length();
                return Optional.of(whole.entry());
            }
            if (next instanceof JournalCodec.Next.Damaged damaged) {
                end(damaged.why());
            } else if (!readOn()) {
                end("the beginning of a record that was never finished");
            }
        }
        return Optional.empty();
    }

    /** What stands behind the last whole record, empty if nothing does; known once {@link #next()} gave nothing. */
    public Optional<Dropped> dropped() {
        return dropped;
    }

    /** Bytes of memory that reading takes, whatever the file's length. */
    int windowLength() {
        return window.capacity();
    }

    private boolean readOn() throws Refusal {
        try {
            return fill(channel, window);
        } catch (IOException trouble) {
            throw unreadable(file, trouble);
        }
    }

    private void end(String why) throws Refusal {
        ended = true;
        try {
            long behind = channel.size() - position;
            dropped = behind > 0 ? Optional.of(new Dropped(position, behind, why)) : Optional.empty();
        } catch (IOException trouble) {
            throw unreadable(file, trouble);
        }
    }

    /** Reads more behind what {@code window} still holds; false at the end of the file. */
    private static boolean fill(FileChannel channel, ByteBuffer window) throws IOException {
        window.compact();
        int got = channel.read(window);
        window.flip();
        return got > 0;
    }

    private static Refusal unreadable(Path file, IOException trouble) {
        return new Refusal(
                ExitCode.JOURNAL_UNREADABLE,
                "The journal " + file + " cannot be read: " + FileTrouble.words(trouble) + ".",
                trouble);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
