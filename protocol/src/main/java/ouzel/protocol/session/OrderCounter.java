package ouzel.protocol.session;

/** The counter of sealed frames: from 1 to the greatest of 32 bits, each value once, then never again. */
final class OrderCounter {
    private static final long GREATEST = 0xFFFF_FFFFL;

    private long last;

    /** Goes on after {@code last}; a new session begins after 0. */
    OrderCounter(long last) {
        this.last = last;
    }

    /** The next value. */
    long next() {
        if (isSpent()) {
            throw new IllegalStateException("counter : " + last + " (expected: less, a new session is due)");
        }
        return ++last;
    }

    /** True when no value is left and a new session must be opened. */
    boolean isSpent() {
        return last >= GREATEST;
    }
}
