package ouzel.app.desk;

/**
 * One instant on both clocks.
 *
 * @param nanos monotonic time, ns; the only clock that logic looks at
 * @param utcMillis wall-clock time, ms since 1970-01-01T00:00Z; recorded and shown, never compared
 */
public record Moment(long nanos, long utcMillis) {
    /** Seconds from {@code earlier} to this moment on the monotonic clock. */
    public double secondsSince(Moment earlier) {
        return (nanos - earlier.nanos) / 1e9;
    }

    /** Milliseconds from {@code earlier} to this moment on the monotonic clock. */
    public long millisSince(Moment earlier) {
        return (nanos - earlier.nanos) / 1_000_000;
    }
}
