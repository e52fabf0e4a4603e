package ouzel.protocol.session;

import ouzel.protocol.message.Downlink;

/** What a payload's session makes of one frame. */
public sealed interface Verdict {
    /** An authentic order, heard for the first time; whether it is in time and allowed, the controller decides. */
    record Verified(Envelope envelope) implements Verdict {}

    /** Nothing changed, but this must be said. */
    record Reply(Downlink message) implements Verdict {}

    /** The console has proved its key: from here this session is in force and the former one is void. */
    record Opened(long session) implements Verdict {}

    /** Dropped and counted; nothing changed. */
    record Refused(Cause cause) implements Verdict {}

    /** Why a frame was dropped. */
    enum Cause {
        /** The tag is not the one that the session key gives: forged, damaged, or from another session. */
        WRONG_TAG,
        /** The counter was used before. */
        REPEATED_COUNTER,
        /** Meant for another payload. */
        NOT_ADDRESSED,
        /** No session is open, and none is being opened. */
        NO_SESSION,
        /** Too short, or a field holds a value that cannot be. */
        MALFORMED,
        /** A kind this version does not know, or one that only payloads say. */
        UNKNOWN_KIND
    }
}
