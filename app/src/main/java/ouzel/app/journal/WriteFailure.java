package ouzel.app.journal;

import java.io.IOException;
import ouzel.app.exit.FileTrouble;

/** The sentence for a journal that cannot be written any more. */
final class WriteFailure {
    /** What appending after {@link Recorder#close()} runs into. */
    static final String CLOSED = "The journal is closed.";

    private WriteFailure() {}

    static String sentence(String file, IOException trouble) {
        return "The journal " + file + " cannot be written: " + FileTrouble.words(trouble)
                + ". Free disk space or mend the directory, then open the desk again.";
    }

    static String brokeDown(String file) {
        return "The writer of the journal " + file + " broke down: open the desk again.";
    }

    static String tooSlow(String file) {
        return "The journal " + file + " cannot be written fast enough: the disk stands still."
                + " Mend it or use another directory, then open the desk again.";
    }
}
