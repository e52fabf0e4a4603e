package ouzel.protocol.session;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Times from orders to their first outcomes, and what they tell of the payload's clock; memory is bounded.
 *
 * <pre>
 *   console   sent -------------------------- heard      offset = payload's time - (sent + heard) / 2
 *                  \                        /            off by at most (heard - sent) / 2
 *   payload          --- payload's time ---
 * </pre>
 *
 * <p>Of the trips remembered, the shortest has the smallest uncertainty and is the one believed.
 *
 * <p><b>Time:</b> handed in. <b>Thread:</b> one at a time. <b>Source:</b> RFC 5905, sections 8 and 10, for the offset
 * and the choice of the shortest.
 */
final class RoundTrips {
    /** Round trips remembered. */
    static final int REMEMBERED = 256;

    private static final int MOST_AWAITED = 64;
    private static final double NANOS_PER_MILLI = 1e6;
    /** The payload's clock is told in whole milliseconds. */
    private static final double CLOCK_STEP_MILLIS = 1;

    private final Map<Long, Long> sentNanosByOrder = new LinkedHashMap<>();
    private final double[] millis = new double[REMEMBERED];
    private final double[] offsets = new double[REMEMBERED];
    private int count;

    /** An order was sent; of retransmissions the first counts. */
    void sent(long orderId, long nowNanos) {
        if (sentNanosByOrder.putIfAbsent(orderId, nowNanos) == null && sentNanosByOrder.size() > MOST_AWAITED) {
            sentNanosByOrder.remove(sentNanosByOrder.keySet().iterator().next());
        }
    }

    /** An outcome was heard that left at {@code payloadMillis}; of several for one order the first counts. */
    void heard(long orderId, long payloadMillis, long nowNanos) {
        Long sentNanos = sentNanosByOrder.remove(orderId);
        if (sentNanos == null) {
            return;
        }
        int place = count++ % REMEMBERED;
        millis[place] = (nowNanos - sentNanos) / NANOS_PER_MILLI;
        long middleNanos = sentNanos + (nowNanos - sentNanos) / 2;
        double middleMillis = Math.floorDiv(middleNanos, (long) NANOS_PER_MILLI);
        // The wire clock is 32 bits wide: the signed difference is right across its wrap.
        offsets[place] = (int) (payloadMillis - (long) middleMillis);
    }

    /** The payload's clock is another one from now on: offsets against the old one are worth nothing. */
    void clockRestarted() {
        count = 0;
        sentNanosByOrder.clear();
    }

    /** The time that {@code share} of the remembered trips stay within, ms; NaN without a trip. */
    double quantileMillis(double share) {
        double[] sorted = Arrays.copyOf(millis, remembered());
        if (sorted.length == 0) {
            return Double.NaN;
        }
        Arrays.sort(sorted);
        double place = share * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    /** The payload's clock minus the console's, ms; NaN without a trip. */
    double offsetMillis() {
        return remembered() == 0 ? Double.NaN : offsets[shortest()];
    }

    /** How far {@link #offsetMillis} may be off either way, ms; NaN without a trip. */
    double uncertaintyMillis() {
        return remembered() == 0 ? Double.NaN : millis[shortest()] / 2 + CLOCK_STEP_MILLIS;
    }

    private int shortest() {
        int best = 0;
        for (int i = 1; i < remembered(); i++) {
            if (millis[i] < millis[best]) {
                best = i;
            }
        }
        return best;
    }

    private int remembered() {
        return Math.min(count, REMEMBERED);
    }
}
