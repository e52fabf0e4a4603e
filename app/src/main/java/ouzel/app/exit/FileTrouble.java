package ouzel.app.exit;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** Says in words why a file could not be read or written. */
public final class FileTrouble {
    private FileTrouble() {}

    /** The reason as the end of a sentence, for example "no permission"; never empty. */
    public static String words(IOException trouble) {
        if (trouble instanceof NoSuchFileException) {
            return "it is not there";
        }
        if (trouble instanceof AccessDeniedException) {
            return "no permission";
        }
        if (trouble instanceof FileAlreadyExistsException) {
            return "something else has that name";
        }
        if (trouble instanceof NotDirectoryException) {
            return "it is not a directory";
        }
        if (trouble instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return trouble.getMessage() == null ? trouble.getClass().getSimpleName() : trouble.getMessage();
    }
}
