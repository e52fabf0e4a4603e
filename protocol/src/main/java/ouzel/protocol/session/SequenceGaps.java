package ouzel.protocol.session;

import ouzel.protocol.frame.Header;

/**
 * Counts what is missing in one sender's frame numbers, which go round at 65 536.
 *
 * <p>A number that was missing and comes late is taken back from the loss. A sender that starts again, seen by its
 * clock going back or by a leap that it cannot have sent in the time, costs nothing.
 *
 * <p><b>Thread:</b> one at a time.
 */
final class SequenceGaps {
    private static final int MODULUS = 0x1_0000;
    private static final int REMEMBERED = Long.SIZE;
    private static final int CLOCK_BACK_MILLIS = 2_000;
    /** No sender is faster than this: 57 600 baud carry 340 of the shortest frames a second. */
    private static final int GREATEST_FRAMES_PER_SECOND = 400;

    /** What one frame did to the count. */
    enum Arrival {
        /** The next, or one after a gap. */
        NEXT,
        /** One that had been counted as lost. */
        LATE,
        /** One that had come before. */
        REPEATED
    }

    private boolean begun;
    private int newest;
    private long newestTimeMillis;
    // Bit n is set when the frame newest - n came.
    private long came;
    private int lastGap;

    /** Takes the header of a good frame. */
    Arrival arrive(Header header) {
        lastGap = 0;
        int ahead = Math.floorMod(header.sequence() - newest, MODULUS);
        int back = MODULUS - ahead;
        if (!begun || isNewStart(header, ahead)) {
            return next(header, REMEMBERED);
        }
        if (ahead == 0) {
            return Arrival.REPEATED;
        }
        if (ahead < MODULUS / 2) {
            lastGap = ahead - 1;
            return next(header, ahead);
        }
        return late(back);
    }

    /** How many frames the last arrival showed to be missing. */
    int lastGap() {
        return lastGap;
    }

    private Arrival next(Header header, int ahead) {
        begun = true;
        newest = header.sequence();
        newestTimeMillis = header.timeMillis();
        // After a start everything before counts as come, so that nothing of it is taken back from the loss.
        came = ahead >= REMEMBERED ? lastGap == 0 ? -1L : 0 : came << ahead;
        came |= 1;
        return Arrival.NEXT;
    }

    private Arrival late(int back) {
        if ((came >>> back & 1) != 0) {
            return Arrival.REPEATED;
        }
        came |= 1L << back;
        return Arrival.LATE;
    }

    private boolean isNewStart(Header header, int ahead) {
        int passedMillis = (int) (header.timeMillis() - newestTimeMillis);
        if (passedMillis < -CLOCK_BACK_MILLIS) {
            return true;
        }
        if (ahead >= MODULUS / 2) {
            return MODULUS - ahead >= REMEMBERED;
        }
        long possible = REMEMBERED + Math.max(0L, passedMillis) * GREATEST_FRAMES_PER_SECOND / 1_000;
        return ahead > possible;
    }
}
