package ouzel.protocol.session;

import java.util.Optional;
import java.util.function.Supplier;
import ouzel.protocol.codec.Decoded;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Challenge;
import ouzel.protocol.message.Open;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.VersionRefusal;

/**
 * The payload's side of the session: decides which frames are worth believing.
 *
 * <pre>
 *               Open                      Confirm proves the pending key
 * no session ---------> challenge sent ---------------------------------> open
 *                           ^                                               |
 *                           |       Open (the session stays in force)       |
 *                           +-----------------------------------------------+
 * </pre>
 *
 * <p>An {@code Open} can be sent by anyone and so changes nothing but the pending challenge. The tag of an order is
 * proved before any other byte of it is believed. A safe-all whose counter is older than the window is still obeyed,
 * once: late safety is better than none.
 *
 * <p><b>Thread:</b> one at a time. <b>Source:</b> {@code PROTOCOL.md}, "Conversation".
 */
public final class PayloadSession {
    private static final int MOST_REFUSED = 0xFFFF;

    /** A challenge and the keys that answer it. */
    private record Opening(Challenge challenge, SessionKey key) {
        boolean isFor(Open open) {
            return challenge.consoleNonce().equals(open.consoleNonce());
        }
    }

    private final PairingKey pairing;
    private final int payload;
    private final Supplier<Bytes> nonces;

    private Optional<Opening> pending = Optional.empty();
    private Optional<Opening> inForce = Optional.empty();
    private ReplayWindow window = new ReplayWindow();
    private long newestSafeAll;
    private int refusedFrames;

    /**
     * No session yet.
     *
     * @param payload this payload's number, 1 to 65 535
     * @param nonces gives 16 bytes that were never given before, such as a {@link NonceSource}
     */
    public PayloadSession(PairingKey pairing, int payload, Supplier<Bytes> nonces) {
        if (payload < 1 || payload > 0xFFFF) {
            throw new IllegalArgumentException("payload : " + payload + " (expected: 1 to 65535)");
        }
        this.pairing = pairing;
        this.payload = payload;
        this.nonces = nonces;
    }

    /** What {@code frame} is to this payload. Every refusal is counted. */
    public Verdict hear(Frame frame) {
        Verdict verdict = judge(frame);
        if (verdict instanceof Verdict.Refused && refusedFrames < MOST_REFUSED) {
            refusedFrames++;
        }
        return verdict;
    }

    /** Public number of the session in force, 0 if none. */
    public long session() {
        return inForce.map(opening -> opening.key().number()).orElse(0L);
    }

    /** Frames refused since this object was made, stops at 65 535. */
    public int refusedFrames() {
        return refusedFrames;
    }

    /** Ends the session and forgets a pending one; nothing that was sealed for either is believed any more. */
    public void voidSession() {
        inForce = Optional.empty();
        pending = Optional.empty();
    }

    private Verdict judge(Frame frame) {
        Header header = frame.header();
        if (!Kind.travelsUp(header.kind())) {
            return refused(Verdict.Cause.UNKNOWN_KIND);
        }
        if (!isAddressed(header)) {
            return refused(Verdict.Cause.NOT_ADDRESSED);
        }
        if (header.major() != Header.VERSION >> 4) {
            return new Verdict.Reply(new VersionRefusal(Header.VERSION, header.version()));
        }
        if (header.kind() == Kind.OPEN.code()) {
            return open(frame);
        }
        return Kind.of(header.kind()).isPresent() ? order(frame) : refused(Verdict.Cause.UNKNOWN_KIND);
    }

    // Only an Open of this version may leave the address open; in another version nothing but the header is known.
    private boolean isAddressed(Header header) {
        return header.payload() == payload || header.payload() == 0 && header.kind() == Kind.OPEN.code();
    }

    private Verdict open(Frame frame) {
        if (!(MessageCodec.decode(frame) instanceof Decoded.Known known && known.message() instanceof Open open)) {
            return refused(Verdict.Cause.MALFORMED);
        }
        return new Verdict.Reply(openingFor(open).challenge());
    }

    // An Open that comes again, however late, gets the challenge it got before, so that it undoes nothing.
    private Opening openingFor(Open open) {
        if (inForce.isPresent() && inForce.get().isFor(open)) {
            return inForce.get();
        }
        if (pending.isEmpty() || !pending.get().isFor(open)) {
            pending = Optional.of(begin(open.consoleNonce()));
        }
        return pending.get();
    }

    private Opening begin(Bytes consoleNonce) {
        Bytes payloadNonce = nonces.get();
        SessionKey key = SessionKey.derive(pairing, consoleNonce, payloadNonce, payload);
        return new Opening(new Challenge(consoleNonce, payloadNonce, key.proof(consoleNonce, payloadNonce)), key);
    }

    private Verdict order(Frame frame) {
        if (frame.body().length() < Seal.SHORTEST_BODY) {
            return refused(Verdict.Cause.MALFORMED);
        }
        boolean answersChallenge = frame.header().kind() == Kind.CONFIRM.code() && pending.isPresent();
        if (answersChallenge && Seal.isTrue(pending.get().key(), frame)) {
            return confirmed(pending.get(), Seal.counter(frame));
        }
        if (inForce.isEmpty()) {
            return refused(answersChallenge ? Verdict.Cause.WRONG_TAG : Verdict.Cause.NO_SESSION);
        }
        if (!Seal.isTrue(inForce.get().key(), frame)) {
            return refused(Verdict.Cause.WRONG_TAG);
        }
        return proven(frame);
    }

    private Verdict confirmed(Opening proven, long counter) {
        ReplayWindow fresh = new ReplayWindow();
        if (fresh.standing(counter) != ReplayWindow.Standing.FRESH) {
            return refused(Verdict.Cause.REPEATED_COUNTER);
        }
        fresh.accept(counter);
        window = fresh;
        newestSafeAll = 0;
        inForce = Optional.of(proven);
        pending = Optional.empty();
        return new Verdict.Opened(proven.key().number());
    }

    // From here on the frame is the console's own; what remains is whether it was heard before and makes sense.
    private Verdict proven(Frame frame) {
        long counter = Seal.counter(frame);
        Decoded decoded = Seal.order(frame);
        boolean isSafeAll = decoded instanceof Decoded.Known known && known.message() instanceof SafeAll;
        boolean isNew =
                switch (window.standing(counter)) {
                    case FRESH -> true;
                    case REPEATED -> false;
                    case TOO_OLD -> isSafeAll && counter > newestSafeAll;
                };
        if (!isNew) {
            return refused(Verdict.Cause.REPEATED_COUNTER);
        }
        markSeen(counter, isSafeAll);
        if (decoded instanceof Decoded.Known known && known.message() instanceof Order order) {
            return new Verdict.Verified(new Envelope(counter, Seal.orderId(frame), Seal.expiresAtMillis(frame), order));
        }
        return refused(Verdict.Cause.MALFORMED);
    }

    private void markSeen(long counter, boolean isSafeAll) {
        if (window.standing(counter) == ReplayWindow.Standing.FRESH) {
            window.accept(counter);
        }
        if (isSafeAll) {
            newestSafeAll = Math.max(newestSafeAll, counter);
        }
    }

    private static Verdict refused(Verdict.Cause cause) {
        return new Verdict.Refused(cause);
    }
}
