package ouzel.app.link;

import ouzel.protocol.frame.ParserCounts;

/**
 * Notices a line on which something comes in that can mostly not be read, such as a serial line at the wrong speed:
 * more bad frames than good ones over {@value #SPAN_SECONDS} s.
 *
 * <p>Thread: one at a time; told the time.
 */
final class GarbleWatch {
    /** How long it is watched before it is judged, s. */
    static final int SPAN_SECONDS = 5;
    /** Fewer bad frames in a span than this are the noise of plugging in, not a judgement. */
    static final int FEWEST = 5;

    private static final long SPAN_NANOS = SPAN_SECONDS * 1_000_000_000L;

    private ParserCounts before;
    private long sinceNanos;
    private boolean wasGarbled;

    /** Starts with a line that has just been opened. */
    GarbleWatch(long nowNanos) {
        before = ParserCounts.NONE;
        sinceNanos = nowNanos;
    }

    /**
     * Looks at the counts; any number of times.
     *
     * @param counts all since the line was opened
     * @return true when the line turns out to be garbled; not again before it has been readable for a span
     */
    boolean turnsGarbled(ParserCounts counts, long nowNanos) {
        if (nowNanos - sinceNanos < SPAN_NANOS) {
            return false;
        }
        long bad = counts.bad() - before.bad();
        long good = counts.good() - before.good();
        before = counts;
        sinceNanos = nowNanos;
        boolean isGarbled = bad >= FEWEST && bad > good;
        boolean turns = isGarbled && !wasGarbled;
        wasGarbled = isGarbled;
        return turns;
    }
}
