package ouzel.protocol.session;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Challenge;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Status;

/** A console and a payload on a line that does what the test says, in a time that the test moves. */
final class Bench {
    static final int PAYLOAD = 5;
    static final PairingKey PAIRING = PairingKey.of(counting(32));

    final ConsoleSession console;
    PayloadSession payload = payload(PAIRING, PAYLOAD, 1);
    long nowNanos = -3_000_000_000L;
    long payloadMillis = 100_000;
    int bootCount = 1;
    private int downSequence;

    Bench() {
        this(PAYLOAD);
    }

    Bench(int expectedPayload) {
        console = new ConsoleSession(PAIRING, nonces(0xC0), expectedPayload);
    }

    static PayloadSession payload(PairingKey pairing, int number, int bootCount) {
        return new PayloadSession(pairing, number, new NonceSource(bootCount, () -> 0x5EEDL));
    }

    /** Nonces that begin with {@code first} and differ in their last byte. */
    static Supplier<Bytes> nonces(int first) {
        byte[] nonce = new byte[16];
        nonce[0] = (byte) first;
        return () -> {
            nonce[15]++;
            return Bytes.of(nonce);
        };
    }

    /** Lets time pass at both ends. */
    void pass(long millis) {
        nowNanos += millis * 1_000_000;
        payloadMillis += millis;
    }

    /** What the console sends now. */
    List<Frame> tick() {
        return console.tick(nowNanos);
    }

    /** The one frame the console sends now. */
    Frame tickOnce() {
        List<Frame> frames = tick();
        if (frames.size() != 1) {
            throw new AssertionError("frames : " + frames + " (expected: one)");
        }
        return frames.get(0);
    }

    /** A frame of the payload under test. */
    Frame down(Downlink message) {
        return downFrom(PAYLOAD, message);
    }

    Frame downFrom(int number, Downlink message) {
        return MessageCodec.encode(message, number, downSequence++ & 0xFFFF, payloadMillis & 0xFFFF_FFFFL);
    }

    List<Heard> consoleHears(Frame frame) {
        return console.hear(frame, nowNanos);
    }

    List<Heard> consoleHearsStatus() {
        return consoleHears(down(status(payload.session())));
    }

    Status status(long session) {
        Readings readings = new Readings(12_000, 300, 11, 5, 7, 184, 10_130, 0, 450, Readings.ABSENT, 8, 0x411);
        List<SamplerState> states = List.of(SamplerState.SAFE, SamplerState.SAFE, SamplerState.SAFE);
        return new Status(session, states, 0, 0x1F, 9, 0, payload.refusedFrames(), 0, 0, 0, bootCount, readings);
    }

    /** The challenge with which the payload answers {@code open}, as a frame. */
    Frame challenge(Frame open) {
        if (payload.hear(open) instanceof Verdict.Reply reply && reply.message() instanceof Challenge challenge) {
            return down(challenge);
        }
        throw new AssertionError("no challenge");
    }

    /** Opens a session over a line that loses nothing; gives all that the console heard. */
    List<Heard> open() {
        List<Heard> heard = new ArrayList<>(consoleHears(challenge(tickOnce())));
        payload.hear(tickOnce());
        heard.addAll(consoleHearsStatus());
        return heard;
    }

    /** The payload as it is after its controller started again. */
    void restartPayload() {
        bootCount++;
        payloadMillis = 15;
        downSequence = 0;
        payload = payload(PAIRING, PAYLOAD, bootCount);
    }

    private static byte[] counting(int length) {
        byte[] bytes = new byte[length];
        for (int i = 0; i < length; i++) {
            bytes[i] = (byte) (i + 1);
        }
        return bytes;
    }

    /** {@code frame} with one byte of its body changed. */
    static Frame damaged(Frame frame, int index) {
        byte[] body = frame.body().toArray();
        body[Math.floorMod(index, body.length)] ^= 0x10;
        return new Frame(frame.header(), Bytes.of(body));
    }

    /** {@code frame} with a body cut to {@code length}. */
    static Frame cut(Frame frame, int length) {
        return new Frame(frame.header(), Bytes.of(Arrays.copyOf(frame.body().toArray(), length)));
    }
}
