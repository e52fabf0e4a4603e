package ouzel.app.screen.model;

import java.util.HashMap;
import java.util.Map;

/**
 * Tells a fresh press of a key from the repeats of one that is held.
 *
 * <p>Some keyboards repeat by pairs of release and press at the same instant; see {@link HoldToTrigger}. Pure: told the
 * time, ns. Thread: one.
 */
public final class PressedKeys {
    private static final long REPEAT_NANOS = HoldToTrigger.REPEAT_MILLIS * 1_000_000L;
    private static final long DOWN = Long.MIN_VALUE;

    /** When each key was released last, or {@link #DOWN} while it is down. */
    private final Map<Integer, Long> keys = new HashMap<>();

    /** The key went down; true if that is a fresh press. */
    public boolean press(int key, long nowNanos) {
        Long before = keys.put(key, DOWN);
        return before == null || (before != DOWN && nowNanos - before > REPEAT_NANOS);
    }

    /** The key came up. */
    public void release(int key, long nowNanos) {
        keys.put(key, nowNanos);
    }

    /** The keyboard went elsewhere: what is down now is not known. */
    public void forget() {
        keys.clear();
    }
}
