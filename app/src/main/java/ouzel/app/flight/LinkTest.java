package ouzel.app.flight;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.Refusal;
import ouzel.app.link.LineListener;
import ouzel.app.link.LinkLoop;
import ouzel.app.link.Port;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.frame.ParserCounts;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.QueryOutcome;
import ouzel.protocol.message.Status;
import ouzel.protocol.session.ConsoleSession;
import ouzel.protocol.session.Heard;
import ouzel.protocol.session.LinkHealth;
import ouzel.protocol.session.LinkStatistics;
import ouzel.protocol.session.PairingKey;

/**
 * Opens a session with a payload, asks it harmless questions for a while, and measures the link.
 *
 * <p><b>Thread:</b> {@link #run} waits for the end; everything else happens on the link thread.
 */
public final class LinkTest implements LineListener {
    /** So much must surely be delivered: the lower end of the 95 % interval, 0 to 1. */
    public static final double LEAST_DELIVERY = 0.9;
    /** 95 of 100 answers must be back within this time, ms. */
    public static final long LONGEST_ROUND_TRIP_MILLIS = 1_000;
    /** A payload that does not open a session in this time is not there, s. */
    static final int PATIENCE_SECONDS = 10;
    /** A stranger that is heard for so long is the one that is there, s. */
    static final int STRANGER_SECONDS = 3;

    private static final double MOST_LATE = 0.05;
    private static final Duration TICK = Duration.ofMillis(50);
    private static final long NANOS_PER_SECOND = 1_000_000_000L;
    private static final long QUESTION_LIFE_MILLIS = 1_000;

    private final LinkLoop loop;
    private final int seconds;
    private final ConsoleSession session;
    private final LinkStatistics statistics;
    private final Questions questions = new Questions();
    private final Strangers strangers = new Strangers();
    private final CompletableFuture<Result> done = new CompletableFuture<>();
    private final PayloadLine line;
    private final long startNanos;

    private String where = "";
    private String trouble = "It was not reached.";
    private Optional<Refusal> stranger = Optional.empty();
    /** When the first session was opened; empty before. */
    private Optional<Long> openedNanos = Optional.empty();

    private boolean isUp;
    private int payload;
    private int breaks;

    /**
     * What a link test found.
     *
     * @param where the line
     * @param payload the payload's number
     * @param seconds how long it was measured, s
     * @param health all that was measured
     * @param asked questions that could have been answered in time
     * @param unanswered those of them that were not
     * @param breaks how often the line or the session was lost
     */
    public record Result(
            String where, int payload, int seconds, LinkHealth health, int asked, int unanswered, int breaks) {
        /** What is not good enough, in words; empty if all is. */
        public List<String> shortcomings() {
            List<String> all = new ArrayList<>();
            // A NaN, which is what nothing at all gives, is never good enough.
            if (!(health.deliveryLow() >= LEAST_DELIVERY)) {
                all.add("too few frames arrive; look at the aerials, the distance and other senders");
            }
            boolean areLate =
                    !(health.roundTripHighMillis() <= LONGEST_ROUND_TRIP_MILLIS) || unanswered > asked * MOST_LATE;
            if (areLate) {
                all.add("answers come too late or never; look at the radio's air speed and who else uses it");
            }
            if (breaks > 0) {
                all.add("the link broke; look at the plug, the cable and the payload's power");
            }
            return all;
        }

        /** True if the link will do. */
        public boolean isGoodEnough() {
            return shortcomings().isEmpty();
        }
    }

    private LinkTest(LinkLoop loop, Port port, PairingKey key, int seconds) {
        this.loop = loop;
        this.seconds = seconds;
        this.session = new ConsoleSession(key, Randomness.nonces(), 0);
        this.session.close();
        this.statistics = new LinkStatistics(seconds + PATIENCE_SECONDS);
        this.startNanos = loop.nowNanos();
        this.line = new PayloadLine(loop, port, key, this);
        loop.every(TICK, this::tick);
    }

    /**
     * Measures the link for {@code seconds}, counted from the opening of the session.
     *
     * @throws Refusal if no session can be opened; the sentence says why
     */
    public static Result run(Port port, PairingKey key, int seconds) throws Refusal {
        try (LinkLoop loop = new LinkLoop()) {
            return CompletableFuture.supplyAsync(() -> new LinkTest(loop, port, key, seconds), loop)
                    .thenCompose(test -> test.done)
                    .join();
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof Refusal refusal) {
                throw refusal;
            }
            throw failed;
        }
    }

    private void tick() {
        long now = loop.nowNanos();
        if (isUp) {
            session.tick(now).forEach(frame -> send(frame, now));
        }
        if (session.isOpen()) {
            for (long id : questions.due(now)) {
                statistics.orderSent(id, now);
                send(session.seal(new QueryOutcome(id), id, QUESTION_LIFE_MILLIS, now), now);
            }
        }
        long patience = (stranger.isPresent() ? STRANGER_SECONDS : PATIENCE_SECONDS) * NANOS_PER_SECOND;
        if (openedNanos.isEmpty() && now - startNanos >= patience) {
            done.completeExceptionally(stranger.orElseGet(() -> new Refusal(ExitCode.PORT_MISSING, nobody())));
        } else if (openedNanos.isPresent() && now - openedNanos.get() >= seconds * NANOS_PER_SECOND) {
            done.complete(result(now));
        }
    }

    private String nobody() {
        return isUp
                ? "No payload answers at " + where + ". Check that it is switched on and paired with this key."
                : trouble;
    }

    private Result result(long nowNanos) {
        int asked = questions.asked(nowNanos, LONGEST_ROUND_TRIP_MILLIS * 1_000_000);
        int unanswered = Math.max(0, asked - questions.answered());
        return new Result(where, payload, seconds, statistics.health(nowNanos), asked, unanswered, breaks);
    }

    private void send(Frame frame, long nowNanos) {
        statistics.frameSent(FrameEncoder.length(frame), nowNanos);
        line.line().send(frame);
    }

    @Override
    public void opened(String place) {
        where = place;
        isUp = true;
        session.reopen();
    }

    @Override
    public void frame(Frame frame, long nowNanos) {
        for (Heard heard : session.hear(frame, nowNanos)) {
            if (heard instanceof Heard.Said said) {
                said(frame, said, nowNanos);
            } else if (heard instanceof Heard.Opened opened) {
                payload = opened.payload();
                line.met(payload);
                openedNanos = Optional.of(openedNanos.orElse(nowNanos));
            } else if (heard instanceof Heard.Lost) {
                breaks++;
                session.reopen();
            } else if (heard instanceof Heard.WrongKey) {
                refuse(ExitCode.WRONG_KEY, heard, nowNanos);
            } else if (heard instanceof Heard.OtherVersion) {
                refuse(ExitCode.OTHER_VERSION, heard, nowNanos);
            }
        }
    }

    private void said(Frame frame, Heard.Said said, long nowNanos) {
        if (openedNanos.isEmpty()) {
            return;
        }
        statistics.frameHeard(said.header(), FrameEncoder.length(frame), nowNanos);
        if (said.message() instanceof Outcome outcome) {
            questions.answered(outcome.orderId());
            statistics.outcomeHeard(outcome.orderId(), said.header(), nowNanos);
        } else if (said.message() instanceof Status status) {
            statistics.refusedOnBoard(status.refusedFrames());
        }
    }

    private void refuse(ExitCode code, Heard heard, long nowNanos) {
        strangers.sentence(heard, nowNanos).ifPresent(words -> stranger = Optional.of(new Refusal(code, words)));
    }

    @Override
    public void counts(ParserCounts counts) {
        statistics.parserCounts(counts);
    }

    @Override
    public void garbled(String sentence) {
        trouble = sentence;
    }

    @Override
    public void lost(String sentence) {
        failed(sentence);
        breaks += openedNanos.isPresent() ? 1 : 0;
    }

    @Override
    public void failed(String sentence) {
        trouble = sentence;
        isUp = false;
        session.close();
    }
}
