package ouzel.app.link;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * When to open a port again. The pause grows from try to try, 0.5 s, 1 s and then 2 s, and starts over once a line
 * has lasted. Because every opening may restart the controller at the far end, no more than {@value #MOST_OPENINGS}
 * openings fall into any 10 s; tries that do not reach the device, such as on a port that is not there, do not
 * count.
 *
 * <p>Thread: one at a time; told the time.
 */
final class RetryPace {
    private static final long MILLISECOND = 1_000_000;
    /** Openings allowed within {@link #WINDOW_NANOS}. */
    static final int MOST_OPENINGS = 4;
    /** See {@link #MOST_OPENINGS}, ns. */
    static final long WINDOW_NANOS = 10_000 * MILLISECOND;
    /** A line that lasted so long was a good one, ns. */
    static final long LASTING_NANOS = 5_000 * MILLISECOND;

    private static final List<Long> PAUSES = List.of(500 * MILLISECOND, 1_000 * MILLISECOND, 2_000 * MILLISECOND);

    private final Deque<Long> openings = new ArrayDeque<>(MOST_OPENINGS);
    private int tries;

    /** The device was opened, for use or in vain. */
    void opened(long nowNanos) {
        if (openings.size() == MOST_OPENINGS) {
            openings.removeFirst();
        }
        openings.addLast(nowNanos);
    }

    /**
     * An open line was lost.
     *
     * @return the pause before the next try, ns
     */
    long pauseAfterLoss(long nowNanos) {
        if (!openings.isEmpty() && nowNanos - openings.getLast() >= LASTING_NANOS) {
            tries = 0;
        }
        return pause(nowNanos);
    }

    /**
     * A try failed.
     *
     * @return the pause before the next one, ns
     */
    long pauseAfterFailure(long nowNanos) {
        return pause(nowNanos);
    }

    private long pause(long nowNanos) {
        long usual = PAUSES.get(Math.min(tries, PAUSES.size() - 1));
        tries++;
        boolean hasUsedAll = openings.size() == MOST_OPENINGS;
        return hasUsedAll ? Math.max(usual, openings.getFirst() + WINDOW_NANOS - nowNanos) : usual;
    }
}
