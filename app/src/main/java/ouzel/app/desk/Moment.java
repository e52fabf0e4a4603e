package ouzel.app.desk;

/**
 * One instant on both clocks.
 *
 * @param nanos monotonic time, ns; the only clock that logic looks at
 * @param utcMillis wall-clock time, ms since 1970-01-01T00:00Z; recorded and shown, and compared only to notice that
 *     the computer slept, during which some monotonic clocks stand still
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

    /** This moment and {@code millis} more, on both clocks. */
    Moment plusMillis(long millis) {
        return new Moment(nanos + millis * 1_000_000, utcMillis + millis);
    }

    /** This monotonic instant, told by the wall clock as it stands at {@code other}: the clock may have been set. */
    Moment withUtcOf(Moment other) {
        return new Moment(nanos, other.utcMillis - other.millisSince(this));
    }

    /**
     * Milliseconds from {@code earlier} to this moment on whichever clock says more: a computer that slept may have
     * stopped its monotonic clock.
     */
    public long passedMillisSince(Moment earlier) {
        return Math.max(millisSince(earlier), utcMillis - earlier.utcMillis);
    }
}
