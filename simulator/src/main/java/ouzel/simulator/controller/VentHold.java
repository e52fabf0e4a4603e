package ouzel.simulator.controller;

import ouzel.protocol.message.Readings;

/**
 * How long ago the soil probe vented its gas. After a restart within the hold nobody knows, so the whole hold runs
 * again.
 */
final class VentHold {
    private final NonVolatile memory;
    private final int holdSeconds;
    private boolean vented;
    private long ventedAtMillis;

    VentHold(NonVolatile memory, int holdSeconds) {
        this.memory = memory;
        this.holdSeconds = holdSeconds;
        this.vented = memory.gasVented();
    }

    void vented(long nowMillis) {
        vented = true;
        ventedAtMillis = nowMillis;
    }

    /** Time since the last vent, s; {@link Readings#ABSENT} if there was none that is still remembered. */
    int sinceSeconds(long nowMillis) {
        if (!vented) {
            return Readings.ABSENT;
        }
        return (int) Math.min((nowMillis - ventedAtMillis) / 1_000, Integer.MAX_VALUE);
    }

    void step(long nowMillis) {
        if (memory.gasVented() && vented && sinceSeconds(nowMillis) >= holdSeconds) {
            memory.ventHoldOver();
        }
    }
}
