package ouzel.app.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A journal file that was not there before. */
final class FileStore implements JournalStore {
    private final Path file;
    private final FileChannel channel;

    private FileStore(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** Makes {@code file}, which must not exist; never writes over anything. */
    static FileStore create(Path file) throws IOException {
        return new FileStore(file, FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
    }

    @Override
    public void write(ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
    }

    /** Forces the bytes out, and makes sure that the name still leads to them: a deleted file takes bytes silently. */
    @Override
    public void force() throws IOException {
        channel.force(false);
        if (!Files.exists(file)) {
            throw new NoSuchFileException(file.toString());
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }

    @Override
    public String name() {
        return file.toString();
    }
}
