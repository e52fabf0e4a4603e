package ouzel.app.link;

import java.io.IOException;

/** A line that was open is of no use any more. The message is a sentence for a person: what, where, and what to do. */
final class LineLost extends IOException {
    private static final long serialVersionUID = 1L;

    LineLost(String sentence) {
        super(sentence);
    }
}
