package ouzel.app.link;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.ParserCounts;

/**
 * One serial line on which the payload may be: greeted until it proves itself, from then on the line of its owner.
 *
 * <p>Thread: link.
 */
final class Candidate implements LineListener {
    private static final Duration GREETING_PAUSE = Duration.ofMillis(100);

    /** Hears what becomes of a candidate. */
    interface Fate {
        /** Bytes can flow. */
        void opened(Candidate candidate);

        /** The payload proved itself. */
        void proven(Candidate candidate);

        /** Something else was heard. */
        void remarked(String sentence);

        /** The open line is gone. */
        void lost(Candidate candidate, String sentence);

        /** The line did not open. */
        void failed(Candidate candidate, String sentence);
    }

    private final LinkLoop loop;
    private final Port.Serial port;
    private final Fate fate;
    private final LineListener owner;
    private final FrameLine line;
    private final long startedNanos;
    private final Greeting greeting;
    private String where = "";
    private boolean isAdopted;
    private LinkLoop.Appointment greetings = () -> {};

    /**
     * Opens the line.
     *
     * @param greeting what proves the payload
     * @param owner hears the line once it is {@linkplain #adopt adopted}
     */
    Candidate(LinkLoop loop, Port.Serial port, Greeting greeting, Fate fate, LineListener owner, AtomicLong dropped) {
        this.loop = loop;
        this.port = port;
        this.fate = fate;
        this.owner = owner;
        this.greeting = greeting;
        this.startedNanos = loop.nowNanos();
        this.line = FrameLine.connect(loop, port, this, dropped);
    }

    Port.Serial port() {
        return port;
    }

    FrameLine line() {
        return line;
    }

    /** Since when the line is there, or is tried to open, ns. */
    long startedNanos() {
        return startedNanos;
    }

    /** From now on all that comes is the owner's. */
    void adopt() {
        isAdopted = true;
        greetings.cancel();
        owner.opened(where);
    }

    private void greet() {
        if (!isAdopted) {
            greeting.due(loop.nowNanos()).forEach(line::send);
        }
    }

    void close() {
        greetings.cancel();
        line.close();
    }

    @Override
    public void opened(String place) {
        where = place;
        greetings = loop.every(GREETING_PAUSE, this::greet);
        fate.opened(this);
    }

    @Override
    public void frame(Frame frame, long nowNanos) {
        if (isAdopted) {
            owner.frame(frame, nowNanos);
            return;
        }
        Greeting.Answer answer = greeting.hear(frame, nowNanos);
        if (!answer.remark().isEmpty()) {
            fate.remarked(port.name() + ": " + answer.remark());
        }
        if (answer.isProof()) {
            fate.proven(this);
        }
    }

    @Override
    public void counts(ParserCounts counts) {
        if (isAdopted) {
            owner.counts(counts);
        }
    }

    @Override
    public void garbled(String sentence) {
        fate.remarked(sentence);
    }

    @Override
    public void lost(String sentence) {
        greetings.cancel();
        fate.lost(this, sentence);
    }

    @Override
    public void failed(String sentence) {
        fate.failed(this, sentence);
    }
}
