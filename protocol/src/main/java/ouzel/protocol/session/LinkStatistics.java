package ouzel.protocol.session;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalLong;
import ouzel.protocol.frame.Header;
import ouzel.protocol.frame.ParserCounts;

/**
 * Keeps count of one payload's downlink and of the time orders take; memory is bounded.
 *
 * <p>Tell it every good frame of that payload, the parser's counts, every order sent and every outcome heard; ask it
 * for {@link #health} when the screen wants it.
 *
 * <p><b>Time:</b> handed in. <b>Thread:</b> one at a time.
 */
public final class LinkStatistics {
    /** Round trips remembered for the median. */
    static final int TRIPS = 32;
    /** The delivery ratio looks back this far, s. */
    static final int RATIO_SECONDS = 10;

    private static final int MOST_AWAITED = 64;
    private static final long NANOS_PER_SECOND = 1_000_000_000;
    private static final long NANOS_PER_MILLI = 1_000_000;

    private final SequenceGaps gaps = new SequenceGaps();
    private final long[] secondOfBucket = new long[RATIO_SECONDS];
    private final int[] heardInBucket = new int[RATIO_SECONDS];
    private final int[] lostInBucket = new int[RATIO_SECONDS];
    private final double[] tripsMillis = new double[TRIPS];
    private final Map<Long, Long> sentNanosByOrder = new LinkedHashMap<>();

    private int trips;
    private long heard;
    private long lost;
    private long repeated;
    private long corrupt;
    private OptionalLong lastHeardNanos = OptionalLong.empty();

    /** Nothing heard yet. */
    public LinkStatistics() {
        Arrays.fill(secondOfBucket, Long.MIN_VALUE);
    }

    /** A good frame of this payload arrived. */
    public void frameHeard(Header header, long nowNanos) {
        lastHeardNanos = OptionalLong.of(nowNanos);
        int bucket = bucket(nowNanos);
        switch (gaps.arrive(header)) {
            case REPEATED -> repeated++;
            case LATE -> {
                came(bucket);
                lose(bucket, -1);
            }
            case NEXT -> {
                came(bucket);
                lose(bucket, gaps.lastGap());
            }
        }
    }

    /** The parser's counts as they stand; they only grow. */
    public void parserCounts(ParserCounts counts) {
        corrupt = counts.bad();
    }

    /** An order was sent; of retransmissions the first counts. Orders of id 0 get no outcome and are left out. */
    public void orderSent(long orderId, long nowNanos) {
        if (orderId != 0
                && sentNanosByOrder.putIfAbsent(orderId, nowNanos) == null
                && sentNanosByOrder.size() > MOST_AWAITED) {
            sentNanosByOrder.remove(sentNanosByOrder.keySet().iterator().next());
        }
    }

    /** An outcome was heard; of several for one order the first counts. */
    public void outcomeHeard(long orderId, long nowNanos) {
        Long sentNanos = sentNanosByOrder.remove(orderId);
        if (sentNanos != null) {
            tripsMillis[trips++ % TRIPS] = (nowNanos - sentNanos) / (double) NANOS_PER_MILLI;
        }
    }

    /** How the link stands now; of the delivery, how it stood in the last {@value #RATIO_SECONDS} s. */
    public LinkHealth health(long nowNanos) {
        return new LinkHealth(heard, lost, deliveryRatio(nowNanos), corrupt, medianTripMillis());
    }

    /** Time since the last good frame, ms; empty before the first. */
    public OptionalLong lastFrameAgeMillis(long nowNanos) {
        return lastHeardNanos.isEmpty()
                ? OptionalLong.empty()
                : OptionalLong.of((nowNanos - lastHeardNanos.getAsLong()) / NANOS_PER_MILLI);
    }

    /** Frames that came more than once; they count as heard only the first time. */
    public long framesRepeated() {
        return repeated;
    }

    private void came(int bucket) {
        heard++;
        heardInBucket[bucket]++;
    }

    private void lose(int bucket, int frames) {
        lost = Math.max(0, lost + frames);
        lostInBucket[bucket] += frames;
    }

    private double deliveryRatio(long nowNanos) {
        long now = Math.floorDiv(nowNanos, NANOS_PER_SECOND);
        long recentlyHeard = 0;
        long recentlyLost = 0;
        for (int i = 0; i < RATIO_SECONDS; i++) {
            if (secondOfBucket[i] > now - RATIO_SECONDS) {
                recentlyHeard += heardInBucket[i];
                recentlyLost += lostInBucket[i];
            }
        }
        // 0 / 0 is the NaN that stands for "nothing was due".
        return (double) recentlyHeard / (recentlyHeard + Math.max(0, recentlyLost));
    }

    private double medianTripMillis() {
        double[] sorted = Arrays.copyOf(tripsMillis, Math.min(trips, TRIPS));
        if (sorted.length == 0) {
            return Double.NaN;
        }
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    private int bucket(long nowNanos) {
        long second = Math.floorDiv(nowNanos, NANOS_PER_SECOND);
        int bucket = (int) Math.floorMod(second, (long) RATIO_SECONDS);
        if (secondOfBucket[bucket] != second) {
            secondOfBucket[bucket] = second;
            heardInBucket[bucket] = 0;
            lostInBucket[bucket] = 0;
        }
        return bucket;
    }
}
