package ouzel.app.flight;

import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.ParserCounts;

/** Where a console's frames go, and what its line counted; the console needs to know no more of a port. */
public interface FrameOut {
    /** Queues a frame behind what waits. */
    void send(Frame frame);

    /** Queues a frame ahead of everything that waits. */
    void sendUrgent(Frame frame);

    /** What the line's parser has counted so far. */
    ParserCounts counts();
}
