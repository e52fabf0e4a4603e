package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Confirm;
import ouzel.protocol.message.Open;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Stop;
import ouzel.protocol.message.Trigger;
import ouzel.protocol.message.VersionRefusal;
import ouzel.protocol.session.Verdict.Cause;

class PayloadSessionTest {
    private static final Order ARM = new Arm(Sampler.AIR, 2_000, 0x15);

    private final Bench bench = new Bench();

    @BeforeEach
    void openASession() {
        bench.open();
    }

    @Test
    void opensWhatTheConsoleSealed() {
        Frame frame = bench.console.seal(ARM, 77, 1_500, bench.nowNanos);

        Verdict verdict = bench.payload.hear(frame);

        long expiresAt = bench.payloadMillis + 1_500;
        assertThat(verdict).isEqualTo(new Verdict.Verified(new Envelope(Seal.counter(frame), 77, expiresAt, ARM)));
        assertThat(bench.payload.refusedFrames()).isZero();
    }

    @Test
    void refusesARepeatedFrame() {
        Frame frame = seal(ARM);
        bench.payload.hear(frame);

        refuses(frame, Cause.REPEATED_COUNTER);
    }

    @Test
    void takesFramesInAnyOrderButEachOnce() {
        Frame first = seal(ARM);
        Frame second = seal(new Stop(Sampler.AIR));

        assertThat(bench.payload.hear(second)).isInstanceOf(Verdict.Verified.class);
        assertThat(bench.payload.hear(first)).isInstanceOf(Verdict.Verified.class);
        refuses(first, Cause.REPEATED_COUNTER);
        refuses(second, Cause.REPEATED_COUNTER);
    }

    @Test
    void refusesAFrameThatLiesBehindTheWindow() {
        Frame old = seal(ARM);
        for (int i = 0; i < 64; i++) {
            bench.payload.hear(seal(new Stop(Sampler.AIR)));
        }

        refuses(old, Cause.REPEATED_COUNTER);
    }

    @Test
    void obeysASafeAllThatLiesBehindTheWindowOnce() {
        Frame old = seal(new SafeAll());
        for (int i = 0; i < 100; i++) {
            bench.payload.hear(seal(new Stop(Sampler.AIR)));
        }

        assertThat(bench.payload.hear(old)).isInstanceOf(Verdict.Verified.class);
        refuses(old, Cause.REPEATED_COUNTER);
    }

    @Test
    void refusesARepeatedSafeAll() {
        Frame frame = seal(new SafeAll());
        bench.payload.hear(frame);

        refuses(frame, Cause.REPEATED_COUNTER);
    }

    @Test
    void refusesAFrameWithAnyBitOfItsBodyChanged() {
        Frame right = seal(new Trigger(Sampler.AIR, 0x1122334455667788L));
        for (int bit = 0; bit < right.body().length() * 8; bit++) {
            byte[] body = right.body().toArray();
            body[bit / 8] ^= (byte) (1 << bit % 8);
            refuses(new Frame(right.header(), Bytes.of(body)), Cause.WRONG_TAG);
        }

        assertThat(bench.payload.hear(right)).isInstanceOf(Verdict.Verified.class);
    }

    @Test
    void refusesAFrameWithAnyFieldOfItsHeaderChanged() {
        Frame right = seal(new Stop(Sampler.AIR));
        Header header = right.header();
        int payload = header.payload();
        int sequence = header.sequence();
        long time = header.timeMillis();

        refuses(new Frame(new Header(0x11, 0x15, payload, sequence, time), right.body()), Cause.WRONG_TAG);
        refuses(new Frame(new Header(0x10, 0x17, payload, sequence, time), right.body()), Cause.WRONG_TAG);
        refuses(new Frame(new Header(0x10, 0x15, payload, sequence + 1, time), right.body()), Cause.WRONG_TAG);
        refuses(new Frame(new Header(0x10, 0x15, payload, sequence, time ^ 1), right.body()), Cause.WRONG_TAG);
    }

    @Test
    void aForgedFrameDoesNotMoveTheWindow() {
        Frame genuine = seal(ARM);
        byte[] forged = genuine.body().toArray();
        forged[3] = (byte) 0xFF;

        refuses(new Frame(genuine.header(), Bytes.of(forged)), Cause.WRONG_TAG);

        assertThat(bench.payload.hear(genuine)).isInstanceOf(Verdict.Verified.class);
    }

    @Test
    void refusesEveryFrameThatIsCut() {
        Frame right = seal(ARM);
        int whole = right.body().length();

        for (int length = 0; length < whole; length++) {
            refuses(Bench.cut(right, length), length < Seal.SHORTEST_BODY ? Cause.MALFORMED : Cause.WRONG_TAG);
        }
    }

    @Test
    void refusesWhatIsMeantForAnotherPayload() {
        Frame frame = seal(ARM);
        Header other = new Header(0x10, Kind.ARM.code(), 6, 0, 0);

        refuses(new Frame(other, frame.body()), Cause.NOT_ADDRESSED);
        refuses(new Frame(new Header(0x10, Kind.ARM.code(), 0, 0, 0), frame.body()), Cause.NOT_ADDRESSED);
        refuses(MessageCodec.encode(new Open(Bytes.of(new byte[16])), 6, 0, 0), Cause.NOT_ADDRESSED);
    }

    @Test
    void refusesUnknownKindsAndWhatOnlyPayloadsSay() {
        refuses(new Frame(new Header(0x10, 0x2F, Bench.PAYLOAD, 0, 0), Bytes.of(new byte[40])), Cause.UNKNOWN_KIND);
        refuses(bench.down(bench.status(1)), Cause.UNKNOWN_KIND);
        refuses(new Frame(new Header(0x20, 0x42, Bench.PAYLOAD, 0, 0), Bytes.of()), Cause.UNKNOWN_KIND);
    }

    @Test
    void refusesAnAuthenticOrderThatMakesNoSense() {
        SessionKey key = currentKey();
        Frame sound = Seal.close(key, new Envelope(900, 1, 0, new Stop(Sampler.SOIL)), Bench.PAYLOAD, 0, 0);
        Header header = sound.header();
        byte[] body = sound.body().toArray();
        body[12] = 9;
        byte[] tag = key.tagOfOrder(
                ouzel.protocol.frame.FrameEncoder.header(header), java.util.Arrays.copyOf(body, body.length - 16));
        System.arraycopy(tag, 0, body, body.length - 16, 16);

        refuses(new Frame(header, Bytes.of(body)), Cause.MALFORMED);
    }

    @ParameterizedTest
    @EnumSource(value = Kind.class, names = "[A-Z_]*", mode = EnumSource.Mode.MATCH_ALL)
    void refusesEveryOrderWithoutASession(Kind kind) {
        PayloadSession fresh = Bench.payload(Bench.PAIRING, Bench.PAYLOAD, 2);
        Frame frame = new Frame(new Header(0x10, kind.code(), Bench.PAYLOAD, 0, 0), Bytes.of(new byte[60]));

        Verdict verdict = fresh.hear(frame);

        if (kind.isOrder()) {
            assertThat(verdict).isEqualTo(new Verdict.Refused(Cause.NO_SESSION));
        }
        assertThat(fresh.session()).isZero();
    }

    @Test
    void anOpenChangesNothingButThePendingChallenge() {
        long session = bench.payload.session();
        Frame open = MessageCodec.encode(new Open(Bytes.of(new byte[16])), 0, 0, 0);

        assertThat(bench.payload.hear(open)).isInstanceOf(Verdict.Reply.class);

        assertThat(bench.payload.session()).isEqualTo(session);
        assertThat(bench.payload.hear(seal(ARM))).isInstanceOf(Verdict.Verified.class);
    }

    @Test
    void aNewSessionVoidsTheFormerOne() {
        Frame former = seal(ARM);
        bench.console.reopen();
        bench.open();

        refuses(former, Cause.WRONG_TAG);
        assertThat(bench.payload.hear(seal(ARM))).isInstanceOf(Verdict.Verified.class);
    }

    @Test
    void aNewSessionCountsFromTheBeginning() {
        Frame last = seal(ARM);
        for (int i = 0; i < 200; i++) {
            last = seal(ARM);
        }
        bench.payload.hear(last);
        bench.console.reopen();
        bench.open();

        Frame first = seal(ARM);

        assertThat(Seal.counter(first)).isLessThan(Seal.counter(last) - 64);
        assertThat(bench.payload.hear(first)).isInstanceOf(Verdict.Verified.class);
        refuses(first, Cause.REPEATED_COUNTER);
    }

    @Test
    void aRepeatedOpenGetsTheSameChallenge() {
        Frame open = MessageCodec.encode(new Open(Bytes.of(new byte[16])), 0, 0, 0);

        assertThat(bench.payload.hear(open)).isEqualTo(bench.payload.hear(open));
    }

    @Test
    void anOpenThatComesAgainAfterItsSessionWasOpenedUndoesNothing() {
        Bench fresh = new Bench();
        Frame open = fresh.tickOnce();
        Frame challenge = fresh.challenge(open);
        fresh.consoleHears(challenge);
        fresh.payload.hear(fresh.tickOnce());
        long session = fresh.payload.session();

        assertThat(fresh.challenge(open).body()).isEqualTo(challenge.body());
        assertThat(fresh.payload.session()).isEqualTo(session).isNotZero();
    }

    @Test
    void refusesARecordedOpeningThatIsPlayedAgain() {
        Bench recorded = new Bench();
        Frame open = recorded.tickOnce();
        recorded.consoleHears(recorded.challenge(open));
        Frame confirm = recorded.tickOnce();
        recorded.payload.hear(confirm);
        recorded.restartPayload();

        recorded.payload.hear(open);

        assertThat(recorded.payload.hear(confirm)).isEqualTo(new Verdict.Refused(Cause.WRONG_TAG));
        assertThat(recorded.payload.session()).isZero();
    }

    @Test
    void aRepeatedConfirmIsHarmless() {
        Frame again = seal(new Confirm());
        long session = bench.payload.session();

        assertThat(bench.payload.hear(again)).isInstanceOf(Verdict.Verified.class);
        assertThat(bench.payload.session()).isEqualTo(session);
    }

    @Test
    void answersAnotherMajorVersionWithBoth() {
        Frame open = new Frame(new Header(0x20, Kind.OPEN.code(), 0, 0, 0), Bytes.of());
        Frame order = new Frame(new Header(0x21, 0x3F, Bench.PAYLOAD, 0, 0), Bytes.of());

        assertThat(bench.payload.hear(open)).isEqualTo(new Verdict.Reply(new VersionRefusal(0x10, 0x20)));
        assertThat(bench.payload.hear(order)).isEqualTo(new Verdict.Reply(new VersionRefusal(0x10, 0x21)));
    }

    @Test
    void believesNothingAfterItsSessionWasVoided() {
        Frame frame = seal(ARM);
        bench.payload.voidSession();

        assertThat(bench.payload.session()).isZero();
        refuses(frame, Cause.NO_SESSION);
    }

    @Test
    void refusesAnOpenThatIsCut() {
        Frame open = MessageCodec.encode(new Open(Bytes.of(new byte[16])), 0, 0, 0);

        refuses(Bench.cut(open, 15), Cause.MALFORMED);
    }

    @Test
    void stopsCountingAtTheGreatestNumberAStatusCanSay() {
        Frame forged = Bench.damaged(seal(new SafeAll()), -1);
        for (int i = 0; i < 65_600; i++) {
            bench.payload.hear(Bench.cut(forged, 3));
        }

        assertThat(bench.payload.refusedFrames()).isEqualTo(65_535);
    }

    @Test
    void refusesANumberThatMeansAnyPayload() {
        assertThatThrownBy(() -> Bench.payload(Bench.PAIRING, 0, 1)).hasMessage("payload : 0 (expected: 1 to 65535)");
    }

    private void refuses(Frame frame, Cause cause) {
        int before = bench.payload.refusedFrames();
        assertThat(bench.payload.hear(frame)).isEqualTo(new Verdict.Refused(cause));
        assertThat(bench.payload.refusedFrames()).isEqualTo(before + 1);
    }

    private Frame seal(Order order) {
        return bench.console.seal(order, 9, 1_000, bench.nowNanos);
    }

    /** The keys in force, which only a test that knows both nonces can make again. */
    private SessionKey currentKey() {
        bench.console.reopen();
        Frame open = bench.tickOnce();
        Frame challenge = bench.challenge(open);
        bench.consoleHears(challenge);
        bench.payload.hear(bench.tickOnce());
        bench.consoleHearsStatus();
        byte[] body = challenge.body().toArray();
        Bytes payloadNonce = Bytes.of(java.util.Arrays.copyOfRange(body, 16, 32));
        return SessionKey.derive(Bench.PAIRING, open.body(), payloadNonce, Bench.PAYLOAD);
    }
}
