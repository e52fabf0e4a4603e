package ouzel.app.link;

/**
 * Tells a quiet serial line from one that is gone. A read that waits in vain comes back empty after its time-out; a
 * read on a line whose device was pulled out comes back empty at once, again and again.
 *
 * <p>Thread: the one that reads.
 */
final class SilenceWatch {
    /** An empty read shorter than this did not wait, ns; the time-out is five times as long. */
    static final long HASTY_NANOS = 20_000_000;
    /** So many hasty reads in a row are no accident; a signal to the process can cause one. */
    static final int MOST_HASTY = 3;

    private int hasty;

    /**
     * Judges one read.
     *
     * @param count what the read returned: bytes, 0 for none, negative for an error
     * @param tookNanos how long it took, ns
     * @return true if the line is gone
     */
    boolean isGone(int count, long tookNanos) {
        hasty = count == 0 && tookNanos < HASTY_NANOS ? hasty + 1 : 0;
        return count < 0 || hasty >= MOST_HASTY;
    }
}
