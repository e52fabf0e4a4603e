package ouzel.app.screen.model;

/**
 * The second step of the two-step action: holding one control without a break for {@value #HOLD_MILLIS} ms.
 *
 * <pre>
 *   IDLE --press--> HELD --800 ms--> COMPLETED --release--> IDLE
 *                    |  \--release before that--> IDLE
 *                    \--cancel, or no tick for 300 ms--> CANCELLED --release--> IDLE
 * </pre>
 *
 * <p>A keyboard that repeats sends more presses (ignored), or pairs of release and press at the same instant; a release
 * therefore counts only when no press follows within {@value #REPEAT_MILLIS} ms, and while that is open nothing
 * completes. After a completion or a cancellation only a fresh press starts again.
 *
 * <p>Pure: every call is told the time, ns, on one monotonic clock. Thread: one.
 */
public final class HoldToTrigger {
    /** How long the control must be held, ms. */
    public static final int HOLD_MILLIS = 800;
    /** A release and a press no further apart than this come from one key that repeats, ms. */
    public static final int REPEAT_MILLIS = 5;
    /** The press of such a pair is waited for this long, as it may still stand in the event queue, ms. */
    public static final int SETTLE_MILLIS = 30;
    /** A screen that was not alive for longer than this did not show the hold, ms. */
    public static final int STALL_MILLIS = 300;

    private static final long NANOS = 1_000_000L;

    private State state = State.IDLE;
    private long pressedAt;
    private long tickedAt;
    private boolean releasing;
    private long releasedAt;
    private String why = "";

    /** Where the hold stands. */
    public enum State {
        /** Nothing is held. */
        IDLE,
        /** Held, and the time runs. */
        HELD,
        /** Held for the whole time; waits for the release. */
        COMPLETED,
        /** Broken off; waits for the release. */
        CANCELLED
    }

    /** The control went down. */
    public void press(long nowNanos) {
        settle(nowNanos, REPEAT_MILLIS);
        releasing = false;
        if (state == State.IDLE) {
            state = State.HELD;
            pressedAt = nowNanos;
            tickedAt = nowNanos;
            why = "";
        }
    }

    /** The control came up, or a repeating key says so. */
    public void release(long nowNanos) {
        if (state != State.IDLE && !releasing) {
            releasing = true;
            releasedAt = nowNanos;
        }
    }

    /** Time went on. Returns true exactly once for each completed hold: now is the time to trigger. */
    public boolean tick(long nowNanos) {
        settle(nowNanos, SETTLE_MILLIS);
        if (state != State.HELD) {
            return false;
        }
        if (nowNanos - tickedAt > STALL_MILLIS * NANOS) {
            cancel("screen stood still");
            return false;
        }
        tickedAt = nowNanos;
        if (releasing || nowNanos - pressedAt < HOLD_MILLIS * NANOS) {
            return false;
        }
        state = State.COMPLETED;
        return true;
    }

    /** Something came between: the hold is void until the control was let go and pressed again. */
    public void cancel(String reason) {
        if (state == State.HELD) {
            state = State.CANCELLED;
            why = reason;
        }
    }

    /** The control is known to be up, for example because the window lost the keyboard: nothing is held any more. */
    public void letGo(String reason) {
        cancel(reason);
        state = State.IDLE;
        releasing = false;
    }

    /** Where the hold stands. */
    public State state() {
        return state;
    }

    /** How much of the hold is done at {@code nowNanos}, 0 to 1. */
    public double fraction(long nowNanos) {
        return switch (state) {
            case IDLE, CANCELLED -> 0;
            case HELD -> Math.min(1, Math.max(0, (nowNanos - pressedAt) / (double) (HOLD_MILLIS * NANOS)));
            case COMPLETED -> 1;
        };
    }

    /** Why the last hold was broken off; empty if it was not. */
    public String why() {
        return why;
    }

    private void settle(long nowNanos, int graceMillis) {
        if (releasing && nowNanos - releasedAt > graceMillis * NANOS) {
            if (state == State.HELD) {
                why = "let go too early";
            }
            state = State.IDLE;
            releasing = false;
        }
    }
}
