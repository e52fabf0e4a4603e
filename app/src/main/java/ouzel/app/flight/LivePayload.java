package ouzel.app.flight;

import java.time.Duration;
import java.util.function.LongConsumer;
import ouzel.app.link.LinkLoop;
import ouzel.protocol.frame.Frame;
import ouzel.simulator.rehearsal.SimulatedPayload;

/**
 * A simulated payload kept in step with real time on the link thread.
 *
 * <p>A loop that was held up catches up step by step, but never by more than a second: when the computer slept, the
 * payload slept too.
 *
 * <p><b>Thread:</b> link.
 */
final class LivePayload {
    private static final long MOST_CATCH_UP_MILLIS = 1_000;
    private static final Duration PAUSE = Duration.ofMillis(SimulatedPayload.STEP_MILLIS);

    private final LinkLoop loop;
    private final SimulatedPayload payload;
    private final LongConsumer afterStep;
    private long steppedToNanos;
    private long millis;

    /**
     * Starts to step {@code payload}.
     *
     * @param afterStep told after each step with the time since the start, ms
     */
    LivePayload(LinkLoop loop, SimulatedPayload payload, LongConsumer afterStep) {
        this.loop = loop;
        this.payload = payload;
        this.afterStep = afterStep;
        this.steppedToNanos = loop.nowNanos();
        loop.every(PAUSE, this::catchUp);
    }

    /** A frame for the payload came in. */
    void hear(Frame frame) {
        payload.hear(frame);
    }

    private void catchUp() {
        long now = loop.nowNanos();
        steppedToNanos = Math.max(steppedToNanos, now - MOST_CATCH_UP_MILLIS * 1_000_000);
        while (now - steppedToNanos >= PAUSE.toNanos()) {
            steppedToNanos += PAUSE.toNanos();
            millis += SimulatedPayload.STEP_MILLIS;
            payload.step();
            afterStep.accept(millis);
        }
    }
}
