package ouzel.protocol.session;

import java.util.Arrays;

/**
 * Sums over the last so many seconds, one ring of one-second buckets; memory is bounded.
 *
 * <p><b>Time:</b> handed in, and may jump. <b>Thread:</b> one at a time.
 */
final class RecentSeconds {
    private static final long NANOS_PER_SECOND = 1_000_000_000;
    private static final long NEVER = Long.MIN_VALUE;

    /** What is summed. */
    enum Sum {
        /** Frames that came. */
        HEARD,
        /** Frames that are missing; a late one takes itself back. */
        LOST,
        /** Bytes from the payload. */
        BYTES_DOWN,
        /** Bytes to the payload. */
        BYTES_UP
    }

    private final long[] secondOfBucket;
    private final long[][] sums;
    private final long[] longestGapNanos;
    private long firstSecond = NEVER;

    /** Nothing yet; looks back {@code seconds}. */
    RecentSeconds(int seconds) {
        secondOfBucket = new long[seconds];
        sums = new long[seconds][Sum.values().length];
        longestGapNanos = new long[seconds];
        Arrays.fill(secondOfBucket, NEVER);
    }

    void add(Sum what, long amount, long nowNanos) {
        sums[bucket(nowNanos)][what.ordinal()] += amount;
    }

    /** A gap of that length ended. */
    void gap(long nanos, long nowNanos) {
        int bucket = bucket(nowNanos);
        longestGapNanos[bucket] = Math.max(longestGapNanos[bucket], nanos);
    }

    long sum(Sum what, long nowNanos) {
        long total = 0;
        for (int i = 0; i < sums.length; i++) {
            if (isRecent(i, nowNanos)) {
                total += sums[i][what.ordinal()];
            }
        }
        return total;
    }

    /** The sum for each second that it was taken over; NaN before the first thing was added. */
    double rate(Sum what, long nowNanos) {
        if (firstSecond == NEVER) {
            return Double.NaN;
        }
        long lasted = second(nowNanos) - firstSecond + 1;
        return sum(what, nowNanos) / (double) Math.max(1, Math.min(lasted, sums.length));
    }

    /** The longest gap that ended lately, ns; 0 if none did. */
    long longestGapNanos(long nowNanos) {
        long longest = 0;
        for (int i = 0; i < longestGapNanos.length; i++) {
            if (isRecent(i, nowNanos)) {
                longest = Math.max(longest, longestGapNanos[i]);
            }
        }
        return longest;
    }

    private boolean isRecent(int bucket, long nowNanos) {
        return secondOfBucket[bucket] > second(nowNanos) - sums.length;
    }

    private int bucket(long nowNanos) {
        long second = second(nowNanos);
        int bucket = (int) Math.floorMod(second, (long) sums.length);
        if (secondOfBucket[bucket] != second) {
            secondOfBucket[bucket] = second;
            Arrays.fill(sums[bucket], 0);
            longestGapNanos[bucket] = 0;
        }
        if (firstSecond == NEVER) {
            firstSecond = second;
        }
        return bucket;
    }

    private static long second(long nowNanos) {
        return Math.floorDiv(nowNanos, NANOS_PER_SECOND);
    }
}
