package ouzel.app.link;

import java.util.List;
import ouzel.protocol.frame.Frame;

/**
 * What is said on an unknown line to learn whether the payload is at its far end. Nothing that is said may move
 * anything, whoever hears it.
 *
 * <p>Thread: link.
 */
public interface Greeting {
    /** The frames to send by now; asked ten times a second. */
    List<Frame> due(long nowNanos);

    /** What one frame from the line means. */
    Answer hear(Frame frame, long nowNanos);

    /**
     * What a frame meant.
     *
     * @param isProof true if only the payload that is sought can have said it
     * @param remark a sentence worth a person's while, such as that another payload is there; may be empty
     */
    record Answer(boolean isProof, String remark) {}
}
