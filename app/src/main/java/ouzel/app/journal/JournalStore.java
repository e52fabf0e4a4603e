package ouzel.app.journal;

import java.io.IOException;
import java.nio.ByteBuffer;

/** Where a journal's bytes go: a file, or in tests something that fails on purpose. */
interface JournalStore {
    /** Writes all of {@code bytes} behind what was written before. */
    void write(ByteBuffer bytes) throws IOException;

    /** Returns once all that was written would survive a loss of power. */
    void force() throws IOException;

    void close() throws IOException;

    /** The file's name, for sentences. */
    String name();
}
