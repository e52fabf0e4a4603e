package ouzel.app.flight;

import ouzel.app.link.Line;
import ouzel.app.link.LineListener;
import ouzel.app.link.LinkLoop;
import ouzel.app.link.Port;
import ouzel.app.link.Reconnector;
import ouzel.app.link.Seeker;
import ouzel.protocol.session.PairingKey;

/**
 * The line to a payload at a port: a network address that is connected again and again, or a serial line that is found
 * again wherever it is plugged in.
 *
 * <p><b>Thread:</b> link.
 */
final class PayloadLine {
    private final Recognition recognition;
    private final Line line;
    private final Runnable recognised;

    PayloadLine(LinkLoop loop, Port port, PairingKey key, LineListener listener) {
        recognition = new Recognition(key, Randomness.nonces());
        if (port instanceof Port.Tcp) {
            line = Reconnector.start(loop, port, listener);
            recognised = () -> {};
        } else {
            Seeker seeker = port instanceof Port.Search search
                    ? Seeker.everywhere(loop, search, recognition, listener)
                    : Seeker.at(loop, (Port.Serial) port, recognition, listener);
            line = seeker;
            recognised = seeker::recognised;
        }
    }

    Line line() {
        return line;
    }

    /** A session with this payload is open: it is this one that will be looked for when the line is lost. */
    void met(int payload) {
        recognition.met(payload);
        recognised.run();
    }
}
