package ouzel.app.screen;

import java.awt.event.InputEvent;

/** When an input event happened, on the monotonic clock, though it was handled later. */
final class EventTime {
    /** An event older than this was stamped by another clock. */
    private static final long MOST_MILLIS = 1_000;

    private EventTime() {}

    static long nanos(InputEvent event) {
        long age = System.currentTimeMillis() - event.getWhen();
        return System.nanoTime() - Math.max(0, Math.min(MOST_MILLIS, age)) * 1_000_000;
    }
}
