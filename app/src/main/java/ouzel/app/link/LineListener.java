package ouzel.app.link;

import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.ParserCounts;

/**
 * What a line tells its owner. A single connection says {@link #opened} and later {@link #lost} once each, or
 * {@link #failed} once; a line that reconnects repeats that as often as it happens. After the owner has closed the line
 * it says nothing more.
 *
 * <p>Sentences are for a person: what happened, where, and what to do.
 *
 * <p>Thread: link, always; an implementation must not wait there.
 */
public interface LineListener {
    /**
     * Bytes can flow.
     *
     * @param where the far end or the serial line, short
     */
    void opened(String where);

    /**
     * A whole frame with a proven checksum came in.
     *
     * @param frame the frame
     * @param nowNanos when, on the clock of {@link LinkLoop#nowNanos()}
     */
    void frame(Frame frame, long nowNanos);

    /**
     * The counts of good and bad frames since this connection was opened have changed.
     *
     * @param counts all of them, not the difference
     */
    void counts(ParserCounts counts);

    /** The line is open, but most of what comes in cannot be read: on a serial line, most likely the wrong speed. */
    void garbled(String sentence);

    /** The connection is gone. */
    void lost(String sentence);

    /** The port could not be opened, or somebody could not be let in. */
    void failed(String sentence);
}
