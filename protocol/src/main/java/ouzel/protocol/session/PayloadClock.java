package ouzel.protocol.session;

/**
 * The console's idea of the payload's clock: the newest time heard, plus the time since. It lags by the delay of the
 * downlink and does not run ahead, so an expiry set by it is never later than it was meant to be.
 *
 * <p>Times are modulo 2^32. A time a little back is a frame that was overtaken and is ignored; a time further back than
 * {@value #OVERTAKEN_MILLIS} ms is a payload that started again.
 *
 * <p><b>Thread:</b> one at a time.
 */
final class PayloadClock {
    /** A frame this much older than the newest was overtaken on the way, ms. */
    static final int OVERTAKEN_MILLIS = 2_000;

    private static final long NANOS_PER_MILLI = 1_000_000;

    private boolean heard;
    private long newestMillis;
    private long heardAtNanos;

    /** A frame with this sender's time arrived. */
    void hear(long timeMillis, long nowNanos) {
        int ahead = (int) (timeMillis - newestMillis);
        if (!heard || ahead >= 0 || ahead < -OVERTAKEN_MILLIS) {
            restart(timeMillis, nowNanos);
        }
    }

    /** Begins anew from this time, whatever was heard before: for a payload that is known to have started again. */
    void restart(long timeMillis, long nowNanos) {
        heard = true;
        newestMillis = timeMillis;
        heardAtNanos = nowNanos;
    }

    /** True once a time was heard. */
    boolean isKnown() {
        return heard;
    }

    /** The payload's clock now, ms, unsigned 32 bits. */
    long millis(long nowNanos) {
        return newestMillis + (nowNanos - heardAtNanos) / NANOS_PER_MILLI & 0xFFFF_FFFFL;
    }
}
