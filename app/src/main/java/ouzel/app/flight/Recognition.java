package ouzel.app.flight;

import java.util.List;
import java.util.function.Supplier;
import ouzel.app.link.Greeting;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.session.ConsoleSession;
import ouzel.protocol.session.Heard;
import ouzel.protocol.session.PairingKey;

/**
 * Recognises a payload by its proof that it holds the pairing key, and, once it was met, by its number too.
 *
 * <p>Only a session's first step is made: the payload is asked for its proof and goes on as it was, with whatever
 * console it has.
 *
 * <p><b>Thread:</b> link.
 */
final class Recognition implements Supplier<Greeting> {
    private final PairingKey key;
    private final Supplier<Bytes> nonces;
    private final Strangers strangers = new Strangers();
    private int payload;

    Recognition(PairingKey key, Supplier<Bytes> nonces) {
        this.key = key;
        this.nonces = nonces;
    }

    /** From now on only this payload is recognised. */
    void met(int number) {
        payload = number;
    }

    @Override
    public Greeting get() {
        return new AskForProof(new ConsoleSession(key, nonces, payload), strangers);
    }

    private record AskForProof(ConsoleSession session, Strangers strangers) implements Greeting {
        @Override
        public List<Frame> due(long nowNanos) {
            return session.state() == ConsoleSession.State.OPENING ? session.tick(nowNanos) : List.of();
        }

        @Override
        public Answer hear(Frame frame, long nowNanos) {
            String remark = session.hear(frame, nowNanos).stream()
                    .filter(heard -> heard instanceof Heard.WrongKey
                            || heard instanceof Heard.OtherVersion
                            || heard instanceof Heard.Foreign)
                    .flatMap(heard -> strangers.sentence(heard, nowNanos).stream())
                    .findFirst()
                    .orElse("");
            return new Answer(session.state() == ConsoleSession.State.CONFIRMING, remark);
        }
    }
}
