package ouzel.protocol.session;

/**
 * Remembers which of the last 64 counters were seen, so that no frame is obeyed twice however the radio repeats and
 * reorders.
 *
 * <pre>
 * too old |  newest - 63  ....  newest  | ahead: fresh
 *         |  seen or fresh, one bit each |
 * </pre>
 *
 * <p>Ask first, prove the tag, then {@link #accept}: a frame that cannot prove itself must not move the window.
 *
 * <p><b>Source:</b> RFC 4303, section 3.4.3. <b>Thread:</b> one at a time.
 */
final class ReplayWindow {
    /** Counters remembered. */
    static final int WIDTH = Long.SIZE;

    /** What a counter is to this window. */
    enum Standing {
        /** Not seen before. */
        FRESH,
        /** Seen before, or 0, which no sender uses. */
        REPEATED,
        /** So far back that the window cannot tell. */
        TOO_OLD
    }

    private long newest;
    // Bit n is set when the counter newest - n was accepted.
    private long seen;

    /** How {@code counter}, unsigned 32 bits, stands; changes nothing. */
    Standing standing(long counter) {
        if (counter == 0) {
            return Standing.REPEATED;
        }
        if (counter > newest) {
            return Standing.FRESH;
        }
        long back = newest - counter;
        if (back >= WIDTH) {
            return Standing.TOO_OLD;
        }
        return (seen >>> back & 1) == 0 ? Standing.FRESH : Standing.REPEATED;
    }

    /** Marks {@code counter} as seen; call only for a fresh one whose tag is proven. */
    void accept(long counter) {
        if (counter > newest) {
            long ahead = counter - newest;
            seen = ahead >= WIDTH ? 0 : seen << ahead;
            newest = counter;
        }
        seen |= 1L << newest - counter;
    }
}
