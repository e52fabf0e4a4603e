package ouzel.simulator.controller;

/** Watches the console's silence: every verified order that came in time sets it back. */
final class DeadMan {
    private final int limitMillis;
    private long heardAtMillis;
    private boolean lossTold;

    DeadMan(int limitMillis) {
        this.limitMillis = limitMillis;
    }

    void heard(long nowMillis) {
        heardAtMillis = nowMillis;
        lossTold = false;
    }

    /** True the first time it is asked after the silence has become too long. */
    boolean losesNow(long nowMillis) {
        if (lossTold || nowMillis - heardAtMillis < limitMillis) {
            return false;
        }
        lossTold = true;
        return true;
    }

    /** How long nothing was heard, ms. */
    int silenceMillis(long nowMillis) {
        return (int) Math.min(nowMillis - heardAtMillis, Integer.MAX_VALUE);
    }

    int limitMillis() {
        return limitMillis;
    }
}
