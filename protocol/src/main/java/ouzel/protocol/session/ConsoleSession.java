package ouzel.protocol.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.Supplier;
import ouzel.protocol.codec.Decoded;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Challenge;
import ouzel.protocol.message.Confirm;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.KeepAlive;
import ouzel.protocol.message.Open;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Status;

/**
 * The console's side of the session: opens it, keeps it alive, seals orders and notices when it is gone.
 *
 * <pre>
 * state       sends                   goes to      when
 * CLOSED      nothing                 OPENING      reopen
 * OPENING     Open every 400 ms       CONFIRMING   a challenge proves the key
 * CONFIRMING  Confirm every 400 ms    OPEN         a status names this session
 *                                     OPENING      no such status for 2 s
 * OPEN        KeepAlive every 200 ms  OPENING      statuses name no session for over 1 s, or the counter is spent
 *                                     CLOSED       statuses name another session for over 1 s
 * any                                 CLOSED       close
 * </pre>
 *
 * <p>A payload that another console has taken over is left to it until a person decides: two consoles that each took it
 * back would disarm it for ever. Each opening uses a fresh nonce, so nothing sealed earlier is worth anything later.
 *
 * <p><b>Time:</b> handed in; only differences count. <b>Thread:</b> one at a time. <b>Source:</b> {@code PROTOCOL.md},
 * "Conversation".
 */
public final class ConsoleSession {
    /** Pause between two Opens or Confirms, ns. */
    static final long RETRY_NANOS = 400_000_000;
    /** Pause between two keep-alives, ns: a burst of losses must swallow seven in a row to look like silence. */
    static final long KEEP_ALIVE_NANOS = 200_000_000;
    /** How long a keep-alive may travel and still count, ms. */
    static final long KEEP_ALIVE_LIFE_MILLIS = 1_000;
    /** A challenge that does not lead to a session in this time is given up, ns. */
    static final long CONFIRM_LIMIT_NANOS = 2_000_000_000;
    /** Statuses of another session mean that ours is gone after this time, ns. */
    static final long LOST_NANOS = 1_000_000_000;

    private static final long CONFIRM_LIFE_MILLIS = 2_000;
    private static final long NANOS_PER_MILLI = 1_000_000;

    /** How far the session is. */
    public enum State {
        /** At rest. */
        CLOSED,
        /** Asking for a challenge. */
        OPENING,
        /** Answering one. */
        CONFIRMING,
        /** In force. */
        OPEN
    }

    private final PairingKey pairing;
    private final Supplier<Bytes> nonces;
    private final int expectedPayload;
    private final PayloadClock clock = new PayloadClock();

    private State state = State.OPENING;
    private Bytes consoleNonce;
    private Optional<SessionKey> key = Optional.empty();
    private OrderCounter counter = new OrderCounter(0);
    private int payload;
    private int sequence;
    private OptionalInt bootCount = OptionalInt.empty();
    private OptionalLong lastSentNanos = OptionalLong.empty();
    private long confirmingSinceNanos;
    private OptionalLong otherSessionSinceNanos = OptionalLong.empty();

    /**
     * A session that begins to open at its first {@link #tick}.
     *
     * @param nonces gives 16 unpredictable bytes that were never given before
     * @param expectedPayload the payload's number, 1 to 65 535; 0 takes the first that proves the key
     */
    public ConsoleSession(PairingKey pairing, Supplier<Bytes> nonces, int expectedPayload) {
        if (expectedPayload < 0 || expectedPayload > 0xFFFF) {
            throw new IllegalArgumentException("expectedPayload : " + expectedPayload + " (expected: 0 to 65535)");
        }
        this.pairing = pairing;
        this.nonces = nonces;
        this.expectedPayload = expectedPayload;
        this.payload = expectedPayload;
        this.consoleNonce = nonces.get();
    }

    /** How far the session is. */
    public State state() {
        return state;
    }

    /** True while orders may be sealed. */
    public boolean isOpen() {
        return state == State.OPEN;
    }

    /** The payload's number: expected, or adopted once it proved the key. */
    public OptionalInt payload() {
        return payload == 0 ? OptionalInt.empty() : OptionalInt.of(payload);
    }

    /** Public number of the session in force, 0 if none. */
    public long session() {
        return isOpen() ? key.map(SessionKey::number).orElse(0L) : 0;
    }

    /** What the payload's clock shows at most by now, ms, unsigned 32 bits; empty if none was heard. */
    public OptionalLong payloadMillis(long nowNanos) {
        return clock.isKnown() ? OptionalLong.of(clock.millis(nowNanos)) : OptionalLong.empty();
    }

    /** Ends the session; nothing is sent until {@link #reopen}. */
    public void close() {
        state = State.CLOSED;
        key = Optional.empty();
    }

    /**
     * Begins a new session with a fresh nonce, from any state; the first Open goes out at the next tick. A session
     * without an expected payload takes the first that proves the key, which may be another than before.
     */
    public void reopen() {
        payload = expectedPayload;
        beginAgain();
    }

    /**
     * An order as a frame, with a counter of its own; call again for a retransmission.
     *
     * @param orderId unsigned 32 bits, the same in each retransmission; 0 if no outcome is wanted
     * @param lifeMillis how long the order may travel and still act, from now on, ms
     * @throws IllegalStateException if the session is not open
     */
    public Frame seal(Order order, long orderId, long lifeMillis, long nowNanos) {
        if (!isOpen()) {
            throw new IllegalStateException("state : " + state + " (expected: " + State.OPEN + ")");
        }
        return sealed(order, orderId, lifeMillis, nowNanos);
    }

    /** The frames that are due by now, at most one. Call at least ten times a second. */
    public List<Frame> tick(long nowNanos) {
        if (mustBeginAgain(nowNanos)) {
            beginAgain();
        }
        boolean isDue = lastSentNanos.isEmpty() || nowNanos - lastSentNanos.getAsLong() >= pauseNanos();
        if (state == State.CLOSED || !isDue) {
            return List.of();
        }
        lastSentNanos = OptionalLong.of(nowNanos);
        return switch (state) {
            case CLOSED -> List.of();
            case OPENING -> List.of(open(nowNanos));
            case CONFIRMING -> List.of(sealed(new Confirm(), 0, CONFIRM_LIFE_MILLIS, nowNanos));
            case OPEN -> List.of(sealed(new KeepAlive(), 0, KEEP_ALIVE_LIFE_MILLIS, nowNanos));
        };
    }

    /** All that {@code frame} means, in the order in which it should be told. */
    public List<Heard> hear(Frame frame, long nowNanos) {
        Header header = frame.header();
        if (Kind.travelsUp(header.kind())) {
            return List.of(new Heard.Unreadable(header.kind(), "said by a console: an echo, or another console"));
        }
        if (header.major() != Header.VERSION >> 4) {
            return List.of(new Heard.OtherVersion(Header.VERSION, header.version()));
        }
        if (header.payload() == 0) {
            return List.of(new Heard.Unreadable(header.kind(), "payload : 0 (expected: 1 to 65535)"));
        }
        if (payload != 0 && header.payload() != payload) {
            return List.of(new Heard.Foreign(header.payload()));
        }
        Decoded decoded = MessageCodec.decode(frame);
        if (decoded instanceof Decoded.Known known && known.message() instanceof Downlink message) {
            return said(message, header, nowNanos);
        }
        String why = decoded instanceof Decoded.Malformed malformed ? malformed.why() : "unknown kind";
        return List.of(new Heard.Unreadable(header.kind(), why));
    }

    private List<Heard> said(Downlink message, Header header, long nowNanos) {
        if (message instanceof Challenge challenge) {
            return challenged(challenge, header, nowNanos);
        }
        noticeTime(message, header, nowNanos);
        List<Heard> heard = new ArrayList<>();
        if (message instanceof Status status) {
            heard.addAll(compareSession(status.session(), nowNanos));
        }
        heard.add(new Heard.Said(message, header));
        return heard;
    }

    // A frame that a modem held back over a restart tells the time of a clock that is no more. Within a session only
    // frames that name their start are believed, and none of an earlier start: an expiry must never come out too late.
    private void noticeTime(Downlink message, Header header, long nowNanos) {
        OptionalInt told = startTold(message);
        boolean isInSession = key.isPresent();
        if (told.isEmpty() && isInSession) {
            return;
        }
        if (told.isEmpty() || told.equals(bootCount)) {
            clock.hear(header.timeMillis(), nowNanos);
        } else if (!isInSession || isLaterStart(told.getAsInt())) {
            bootCount = told;
            clock.restart(header.timeMillis(), nowNanos);
        }
    }

    private static OptionalInt startTold(Downlink message) {
        if (message instanceof Status status) {
            return OptionalInt.of(status.bootCount());
        }
        return message instanceof Identity identity
                ? OptionalInt.of((int) (identity.bootCount() & 0xFFFF))
                : OptionalInt.empty();
    }

    // Starts are counted modulo 2^16.
    private boolean isLaterStart(int told) {
        return bootCount.isEmpty() || (short) (told - bootCount.getAsInt()) > 0;
    }

    private List<Heard> challenged(Challenge challenge, Header header, long nowNanos) {
        // One challenge for each of our nonces: to go back to an earlier one would begin its counter again.
        boolean isAwaited = state == State.OPENING && challenge.consoleNonce().equals(consoleNonce);
        if (!isAwaited) {
            return List.of();
        }
        SessionKey fresh = SessionKey.derive(pairing, consoleNonce, challenge.payloadNonce(), header.payload());
        Bytes expected = fresh.proof(consoleNonce, challenge.payloadNonce());
        if (!SessionKey.isSame(expected.toArray(), challenge.tag().toArray())) {
            return List.of(new Heard.WrongKey(header.payload()));
        }
        confirm(fresh, header, nowNanos);
        return List.of();
    }

    private void confirm(SessionKey fresh, Header header, long nowNanos) {
        state = State.CONFIRMING;
        key = Optional.of(fresh);
        counter = new OrderCounter(0);
        payload = header.payload();
        clock.restart(header.timeMillis(), nowNanos);
        confirmingSinceNanos = nowNanos;
        lastSentNanos = OptionalLong.empty();
    }

    private List<Heard> compareSession(long named, long nowNanos) {
        boolean isOurs = key.isPresent() && key.get().number() == named;
        if (isOurs) {
            otherSessionSinceNanos = OptionalLong.empty();
        }
        if (isOurs && state == State.CONFIRMING) {
            state = State.OPEN;
            lastSentNanos = OptionalLong.empty();
            return List.of(new Heard.Opened(payload, named));
        }
        return isOurs || !isOpen() ? List.of() : doubt(named, nowNanos);
    }

    private List<Heard> doubt(long named, long nowNanos) {
        if (otherSessionSinceNanos.isEmpty()) {
            otherSessionSinceNanos = OptionalLong.of(nowNanos);
        }
        if (nowNanos - otherSessionSinceNanos.getAsLong() <= LOST_NANOS) {
            return List.of();
        }
        if (named == 0) {
            beginAgain();
            return List.of(new Heard.Lost("the payload has no session any more: it started again", true));
        }
        close();
        return List.of(new Heard.Lost("another console has taken the payload over", false));
    }

    private void beginAgain() {
        close();
        state = State.OPENING;
        consoleNonce = nonces.get();
        lastSentNanos = OptionalLong.empty();
        otherSessionSinceNanos = OptionalLong.empty();
    }

    private boolean mustBeginAgain(long nowNanos) {
        return switch (state) {
            case CLOSED, OPENING -> false;
            case CONFIRMING -> nowNanos - confirmingSinceNanos > CONFIRM_LIMIT_NANOS || counter.isSpent();
            case OPEN -> counter.isSpent();
        };
    }

    private long pauseNanos() {
        return isOpen() ? KEEP_ALIVE_NANOS : RETRY_NANOS;
    }

    private Frame open(long nowNanos) {
        return MessageCodec.encode(new Open(consoleNonce), payload, nextSequence(), millis(nowNanos));
    }

    private Frame sealed(Order order, long orderId, long lifeMillis, long nowNanos) {
        long expiresAtMillis = clock.millis(nowNanos) + lifeMillis & 0xFFFF_FFFFL;
        Envelope envelope = new Envelope(counter.next(), orderId, expiresAtMillis, order);
        return Seal.close(key.orElseThrow(), envelope, payload, nextSequence(), millis(nowNanos));
    }

    private int nextSequence() {
        int next = sequence;
        sequence = sequence + 1 & 0xFFFF;
        return next;
    }

    private static long millis(long nowNanos) {
        return Math.floorDiv(nowNanos, NANOS_PER_MILLI) & 0xFFFF_FFFFL;
    }
}
