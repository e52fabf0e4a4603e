package ouzel.simulator.controller;

/**
 * Finds a sensor whose noise has died: a live one never gives the very same value for seconds on end.
 *
 * <p>Zero proves nothing: there the lower end of the range clips the noise of a live sensor too.
 */
final class Stillness {
    private final int frozenMillis;
    private int value;
    private long changedAtMillis;

    Stillness(int frozenMillis) {
        this.frozenMillis = frozenMillis;
    }

    /** Takes a raw value and tells whether the sensor has stood still for longer than a live one can. */
    boolean isFrozen(int raw, long nowMillis) {
        if (raw != value) {
            value = raw;
            changedAtMillis = nowMillis;
        }
        return raw != 0 && nowMillis - changedAtMillis > frozenMillis;
    }
}
