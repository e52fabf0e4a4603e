package ouzel.simulator.controller;

/** Since when a condition holds without a break; told the condition and the time at each step. */
final class Lasting {
    private static final long NOT_HOLDING = -1;

    private long sinceMillis = NOT_HOLDING;

    void note(boolean holds, long nowMillis) {
        if (!holds) {
            sinceMillis = NOT_HOLDING;
        } else if (sinceMillis == NOT_HOLDING) {
            sinceMillis = nowMillis;
        }
    }

    /** True if the condition holds and has held for {@code millis} by now; 0 asks whether it holds at all. */
    boolean hasLasted(long millis, long nowMillis) {
        return sinceMillis != NOT_HOLDING && nowMillis - sinceMillis >= millis;
    }

    /** {@link #note} and {@link #hasLasted} in one. */
    boolean lasts(boolean holds, long millis, long nowMillis) {
        note(holds, nowMillis);
        return hasLasted(millis, nowMillis);
    }
}
