package ouzel.app.link;

import java.io.IOException;

/** A line could not be opened, or was lost. The message is a sentence for a person: what, where, and what to do. */
final class LineFailure extends IOException {
    private static final long serialVersionUID = 1L;

    /** What stood in the way. */
    enum Cause {
        /** There is no such port, or nobody answers there. */
        NOT_THERE,
        /** The system does not let this person use it. */
        NO_PERMISSION,
        /** Another program, or this one, has it open. */
        IN_USE,
        /** It is no serial line, or does not know the speed. */
        NOT_SUITABLE,
        /** The system's part for serial lines could not be loaded. */
        NO_NATIVE_PART,
        /** It was open and is of no use any more. */
        LOST,
        /** Something else. */
        OTHER
    }

    private final Cause cause;

    LineFailure(Cause cause, String sentence) {
        super(sentence);
        this.cause = cause;
    }

    LineFailure(Cause cause, String sentence, Throwable origin) {
        super(sentence, origin);
        this.cause = cause;
    }

    Cause kind() {
        return cause;
    }
}
