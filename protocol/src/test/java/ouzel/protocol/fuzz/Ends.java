package ouzel.protocol.fuzz;

import java.util.List;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Status;
import ouzel.protocol.session.ConsoleSession;
import ouzel.protocol.session.NonceSource;
import ouzel.protocol.session.PairingKey;
import ouzel.protocol.session.PayloadSession;
import ouzel.protocol.session.Verdict;

/** A console and a payload that share a key, in session with each other, between whom somebody sits. */
final class Ends {
    static final int PAYLOAD = 5;
    private static final PairingKey KEY = PairingKey.of(new byte[PairingKey.LENGTH]);
    private static final Readings READINGS = new Readings(12_000, 300, 11, 5, 7, 184, 10_130, 0, 450, 9, 8, 0x411);

    final PayloadSession payload = new PayloadSession(KEY, PAYLOAD, new NonceSource(1, () -> 0));
    final ConsoleSession console;
    long nowNanos;
    private int sequence;

    Ends() {
        byte[] nonce = new byte[16];
        console = new ConsoleSession(
                KEY,
                () -> {
                    nonce[0]++;
                    return Bytes.of(nonce);
                },
                0);
    }

    /** Opens the session over a line that loses nothing. */
    Ends open() {
        for (int i = 0; i < 3; i++) {
            pass(400);
            console.tick(nowNanos).forEach(frame -> answer(payload.hear(frame)));
            console.hear(status(payload.session()), nowNanos);
        }
        return this;
    }

    void answer(Verdict verdict) {
        if (verdict instanceof Verdict.Reply reply) {
            console.hear(MessageCodec.encode(reply.message(), PAYLOAD, next(), millis()), nowNanos);
        }
    }

    void pass(long millis) {
        nowNanos += millis * 1_000_000;
    }

    /** A status of the payload that names {@code session}. */
    Frame status(long session) {
        List<SamplerState> states = List.of(SamplerState.SAFE, SamplerState.SAFE, SamplerState.SAFE);
        Status status = new Status(session, states, 0, 0x1F, 9, 0, 0, 0, 0, 0, 1, READINGS);
        return MessageCodec.encode(status, PAYLOAD, next(), millis());
    }

    private int next() {
        return sequence++ & 0xFFFF;
    }

    private long millis() {
        return nowNanos / 1_000_000 & 0xFFFF_FFFFL;
    }
}
