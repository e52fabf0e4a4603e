package ouzel.protocol.session;

import java.util.OptionalLong;
import ouzel.protocol.frame.Header;
import ouzel.protocol.frame.ParserCounts;
import ouzel.protocol.session.RecentSeconds.Sum;

/**
 * Keeps count of one payload's downlink and of the time orders take; memory is bounded.
 *
 * <p>Tell it every good frame of that payload, the parser's counts, every frame and order sent, every outcome heard and
 * the payload's own count of refusals; ask it for {@link #health} when the screen wants it.
 *
 * <p><b>Time:</b> handed in. <b>Thread:</b> one at a time.
 */
public final class LinkStatistics {
    /** The delivery ratio looks back this far unless told otherwise, s. */
    static final int RATIO_SECONDS = 10;
    /** Quantile of the round trips that counts as a long one. */
    static final double HIGH_QUANTILE = 0.95;

    private static final double NANOS_PER_MILLI = 1e6;
    /** A clock that goes back by more than frames overtake each other has started again, ms. */
    private static final int CLOCK_BACK_MILLIS = PayloadClock.OVERTAKEN_MILLIS;

    private final SequenceGaps gaps = new SequenceGaps();
    private final RoundTrips trips = new RoundTrips();
    private final RecentSeconds recent;

    private long heard;
    private long lost;
    private long repeated;
    private long refused;
    private long corruptBefore;
    private long corruptOnThisLine;
    private long newestTimeMillis;
    private OptionalLong lastHeardNanos = OptionalLong.empty();

    /** Nothing heard yet; looks back {@value #RATIO_SECONDS} s. */
    public LinkStatistics() {
        this(RATIO_SECONDS);
    }

    /** Nothing heard yet; looks back {@code windowSeconds}, at least 1. */
    public LinkStatistics(int windowSeconds) {
        recent = new RecentSeconds(windowSeconds);
    }

    /** A good frame of this payload arrived, {@code bytes} long on the line. */
    public void frameHeard(Header header, int bytes, long nowNanos) {
        lastHeardNanos.ifPresent(last -> recent.gap(nowNanos - last, nowNanos));
        lastHeardNanos = OptionalLong.of(nowNanos);
        recent.add(Sum.BYTES_DOWN, bytes, nowNanos);
        noticeClock(header.timeMillis());
        switch (gaps.arrive(header)) {
            case REPEATED -> repeated++;
            case LATE -> came(-1, nowNanos);
            case NEXT -> came(gaps.lastGap(), nowNanos);
        }
    }

    private void noticeClock(long timeMillis) {
        int ahead = (int) (timeMillis - newestTimeMillis);
        if (ahead < -CLOCK_BACK_MILLIS) {
            trips.clockRestarted();
        }
        if (ahead >= 0 || ahead < -CLOCK_BACK_MILLIS) {
            newestTimeMillis = timeMillis;
        }
    }

    /** The parser's counts as they stand; each new connection may begin them again at zero. */
    public void parserCounts(ParserCounts counts) {
        if (counts.bad() < corruptOnThisLine) {
            corruptBefore += corruptOnThisLine;
        }
        corruptOnThisLine = counts.bad();
    }

    /** What the payload says of the frames that it refused. */
    public void refusedOnBoard(long frames) {
        refused = frames;
    }

    /** A frame was sent, {@code bytes} long on the line. */
    public void frameSent(int bytes, long nowNanos) {
        recent.add(Sum.BYTES_UP, bytes, nowNanos);
    }

    /** An order was sent; of retransmissions the first counts. Orders of id 0 get no outcome and are left out. */
    public void orderSent(long orderId, long nowNanos) {
        if (orderId != 0) {
            trips.sent(orderId, nowNanos);
        }
    }

    /** An outcome was heard, in a frame of the payload's; of several for one order the first counts. */
    public void outcomeHeard(long orderId, Header header, long nowNanos) {
        trips.heard(orderId, header.timeMillis(), nowNanos);
    }

    /** The console's clock stood still or jumped: what was measured against it is forgotten. */
    public void clockJumped() {
        trips.clockRestarted();
        lastHeardNanos = OptionalLong.empty();
    }

    /** How the link stands now, and how it stood lately. */
    public LinkHealth health(long nowNanos) {
        long recentlyHeard = recent.sum(Sum.HEARD, nowNanos);
        long recentlyLost = Math.max(0, recent.sum(Sum.LOST, nowNanos));
        Proportion delivery = Proportion.of(recentlyHeard, recentlyHeard + recentlyLost);
        double age = lastHeardNanos.isEmpty() ? Double.NaN : (nowNanos - lastHeardNanos.getAsLong()) / NANOS_PER_MILLI;
        double longestGap = recent.longestGapNanos(nowNanos) / NANOS_PER_MILLI;
        return new LinkHealth(
                heard,
                lost,
                delivery.share(),
                corruptBefore + corruptOnThisLine,
                trips.quantileMillis(0.5),
                delivery.low(),
                delivery.high(),
                trips.quantileMillis(HIGH_QUANTILE),
                Math.max(longestGap, age),
                age,
                recent.rate(Sum.BYTES_DOWN, nowNanos),
                recent.rate(Sum.BYTES_UP, nowNanos),
                refused,
                trips.offsetMillis(),
                trips.uncertaintyMillis());
    }

    /** Time since the last good frame, ms; empty before the first. */
    public OptionalLong lastFrameAgeMillis(long nowNanos) {
        return lastHeardNanos.isEmpty()
                ? OptionalLong.empty()
                : OptionalLong.of((long) ((nowNanos - lastHeardNanos.getAsLong()) / NANOS_PER_MILLI));
    }

    /** Frames that came more than once; they count as heard only the first time. */
    public long framesRepeated() {
        return repeated;
    }

    private void came(int missing, long nowNanos) {
        heard++;
        recent.add(Sum.HEARD, 1, nowNanos);
        lost = Math.max(0, lost + missing);
        recent.add(Sum.LOST, missing, nowNanos);
    }
}
