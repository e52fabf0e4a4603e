package ouzel.app.link;

import java.util.concurrent.CompletionStage;
import ouzel.protocol.frame.Frame;

/**
 * A way to send frames to the far end; what comes back is told to the {@link LineListener} the line was made with.
 *
 * <p>Frames that cannot leave at once wait in a small queue. When it is full the oldest is dropped, for its content
 * is the stalest, and counted. Nothing waits for a connection that is not there: such frames are dropped and
 * counted too.
 *
 * <p>Thread: any.
 */
public sealed interface Line permits FrameLine, FrameServer, Reconnector, Seeker {

    /** What carries the frames; the rehearsal key must not be used where {@link LineKind#isSerial()}. */
    LineKind kind();

    /** Sends a frame in turn. */
    void send(Frame frame);

    /** Sends a frame ahead of every frame that still waits in this program: for safe-all. */
    void sendUrgent(Frame frame);

    /** Frames given to this line that never left, since it was made. */
    long dropped();

    /**
     * Ends the line for good. Idempotent.
     *
     * @return completes on the link thread when the system has the port back
     */
    CompletionStage<Void> close();
}
