package ouzel.app.swarm;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameParser;
import ouzel.protocol.message.Challenge;

/** Stands beside the payload, hears every byte that it is given, and works out alone which of it is authentic. */
final class Witness {
    static final int PAYLOAD = 7;

    private final byte[] secret;
    private final FrameParser ear = new FrameParser();
    private final Set<Long> counters = new HashSet<>();
    private Optional<SessionProof> pending = Optional.empty();
    private Optional<SessionProof> inForce = Optional.empty();

    /** What the payload has been given. */
    interface Listener {
        /** A console has proved the key: the former session is void. */
        void sessionOpened();

        /** An authentic order, in a frame that was not heard before in this session. */
        void given(Given given);

        /** A frame that only a forger or an older session can have sealed. */
        void forged();
    }

    Witness(byte[] secret) {
        this.secret = secret;
    }

    /** The power went. */
    void restarted() {
        ear.reset();
        pending = Optional.empty();
        inForce = Optional.empty();
        counters.clear();
    }

    boolean isInSession() {
        return inForce.isPresent();
    }

    /** The payload is given {@code chunk}. */
    void given(byte[] chunk, Listener listener) {
        ear.feed(chunk, frame -> judge(frame, listener));
    }

    /** The payload has answered an Open. */
    void said(Challenge challenge) {
        boolean isOld = inForce.filter(proof -> proof.isFor(challenge)).isPresent()
                || pending.filter(proof -> proof.isFor(challenge)).isPresent();
        if (!isOld) {
            pending = Optional.of(new SessionProof(secret, challenge, PAYLOAD));
        }
    }

    private void judge(Frame frame, Listener listener) {
        int kind = frame.header().kind();
        boolean isOrder = Kind.of(kind).filter(Kind::isOrder).isPresent();
        if (!isOrder || frame.header().payload() != PAYLOAD || frame.header().version() >> 4 != 1) {
            return;
        }
        Optional<Given> given = Given.in(frame);
        if (kind == Kind.CONFIRM.code() && pending.isPresent() && pending.get().proves(frame)) {
            inForce = pending;
            pending = Optional.empty();
            counters.clear();
            given.ifPresent(order -> counters.add(order.counter()));
            listener.sessionOpened();
        } else if (inForce.isEmpty() || !inForce.get().proves(frame)) {
            listener.forged();
        } else {
            given.filter(order -> counters.add(order.counter())).ifPresent(listener::given);
        }
    }
}
