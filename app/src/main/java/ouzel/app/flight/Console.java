package ouzel.app.flight;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import ouzel.app.desk.Act;
import ouzel.app.desk.Desk;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Effect;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Sample;
import ouzel.app.desk.Stimulus;
import ouzel.app.journal.Recorder;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.QueryOutcome;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Status;
import ouzel.protocol.session.ConsoleSession;
import ouzel.protocol.session.Heard;
import ouzel.protocol.session.LinkStatistics;
import ouzel.simulator.plant.Truth;

/**
 * A console without a screen, a port or a thread of its own: the fold, the session and the journal joined.
 *
 * <pre>
 *   frames, acts, ticks --> journal --> fold --> effects --> [journal on disk] --> session seals --> line
 * </pre>
 *
 * <p>Every stimulus is in the journal before it is folded, and an arm or trigger leaves only after the journal up to it
 * is safe on disk. The same object flies live and in virtual time: the caller brings the clock.
 *
 * <p><b>Thread:</b> one at a time, the desk thread; the recorder calls back on that thread too.
 */
public final class Console {
    /** An arm or trigger that waited longer than this for the disk is not sent: its moment is over, ms. */
    static final long LONGEST_WAIT_FOR_DISK_MILLIS = 1_000;
    /** A console that did nothing for longer slept or hung: what the line kept meanwhile is old, ms. */
    static final long LONGEST_STANDSTILL_MILLIS = 2_000;
    /** The link is measured this often, ms. */
    private static final long MEASURE_MILLIS = 1_000;
    /** A round trip is timed this often, ms. */
    private static final long PING_MILLIS = 2_000;

    private static final long PING_LIFE_MILLIS = 1_000;
    /** Ids of pings are taken from here on, far from those that a desk gives its orders. */
    private static final long FIRST_PING = 0xF000_0000L;

    private final Supplier<Moment> clock;
    private final Recorder recorder;
    private final FrameOut line;
    private final Consumer<Effect.Cue> sounds;
    private final ConsoleSession session;
    private final LinkStatistics statistics = new LinkStatistics();
    private final Strangers strangers = new Strangers();
    private final Deque<Stimulus> waiting = new ArrayDeque<>();
    /** Ids of orders whose first copy waits for the disk: no repetition may overtake it. */
    private final Set<Long> waitingForDisk = new HashSet<>();

    private DeskState state;
    private boolean folding;
    private long measuredNanos;
    private long pingedNanos;
    private long nextPing = FIRST_PING;
    private Moment alive;

    /** A console that has just been opened; it begins to look for its payload once its line is up. */
    public Console(Setup setup, Supplier<Moment> clock, Recorder recorder, FrameOut line, Consumer<Effect.Cue> sounds) {
        this.clock = clock;
        this.recorder = recorder;
        this.line = line;
        this.sounds = sounds;
        this.session = new ConsoleSession(setup.key(), setup.nonces(), setup.payload());
        this.session.close();
        Moment now = clock.get();
        this.measuredNanos = now.nanos();
        this.pingedNanos = now.nanos();
        this.alive = now;
        this.state = Desk.start(now);
        apply(new Stimulus.Opened(setup.firstOrderId(), setup.rehearsal(), setup.site()));
    }

    /** What is known now. */
    public DeskState state() {
        return state;
    }

    /** Bytes can flow. */
    public void lineUp(String sentence) {
        session.reopen();
        apply(new Stimulus.LineChanged(true, sentence));
    }

    /** Bytes cannot flow, or not any more. */
    public void lineDown(String sentence) {
        boolean wasOpen = state.session().open();
        session.close();
        if (wasOpen) {
            apply(new Stimulus.SessionLost("Session ended: the line is down."));
        }
        apply(new Stimulus.LineChanged(false, sentence));
    }

    /** The operator did something. */
    public void act(Act act) {
        noticeStandstill(clock.get());
        apply(new Stimulus.Acted(act));
        if (act instanceof Act.Reconnect && state.line().up() && session.state() == ConsoleSession.State.CLOSED) {
            session.reopen();
        }
    }

    /** Something on the line does not belong there; {@code sentence} says what, and what to do. */
    public void strangerHeard(String sentence) {
        apply(new Stimulus.StrangerHeard(sentence));
    }

    /** The simulated plant tells what it really holds: every sample that is new learns its true amount. */
    public void tellTruth(Truth truth) {
        for (Sample sample : state.samples()) {
            if (sample.truth().isEmpty()) {
                apply(new Stimulus.TruthTold(sample.sampler(), amount(truth, sample.sampler())));
            }
        }
    }

    /** What the plant holds of one sampler: mL, mL, g. */
    private static double amount(Truth truth, Sampler sampler) {
        return switch (sampler) {
            case WATER -> truth.water().jarMillilitres();
            case AIR -> truth.air().bagMillilitres();
            case SOIL -> truth.soil().sampleGrams();
        };
    }

    /** The journal cannot be written, or can again. */
    public void journalChanged(boolean writing, String sentence) {
        if (state.journal().writing() != writing) {
            apply(new Stimulus.JournalChanged(writing, sentence));
        }
    }

    /** Time went on: call ten times a second. */
    public void tick() {
        Moment now = clock.get();
        noticeStandstill(now);
        if (state.line().up()) {
            session.tick(now.nanos()).forEach(frame -> send(frame, now));
            ping(now);
        }
        if (now.nanos() - measuredNanos >= MEASURE_MILLIS * 1_000_000) {
            measuredNanos = now.nanos();
            statistics.parserCounts(line.counts());
            apply(new Stimulus.LinkMeasured(statistics.health(now.nanos())));
        }
        apply(new Stimulus.Ticked());
    }

    /**
     * After a standstill everything that waits on the line is old, however fresh it looks: only a new session, whose
     * statuses cannot have been said before, is believed.
     */
    private void noticeStandstill(Moment now) {
        long stoodMillis = now.passedMillisSince(alive);
        alive = now;
        if (stoodMillis <= LONGEST_STANDSTILL_MILLIS) {
            return;
        }
        statistics.clockJumped();
        if (session.state() != ConsoleSession.State.CLOSED) {
            session.reopen();
        }
        apply(new Stimulus.SessionLost("This computer slept or stood still for " + stoodMillis / 1_000
                + " s: what the payload said before is old, and it is asked anew."));
    }

    /** Asks the payload what became of an order that never was, to time the way there and back. */
    private void ping(Moment now) {
        if (session.isOpen() && now.nanos() - pingedNanos >= PING_MILLIS * 1_000_000) {
            pingedNanos = now.nanos();
            long id = nextPing;
            nextPing = id == 0xFFFF_FFFFL ? FIRST_PING : id + 1;
            Frame frame = session.seal(new QueryOutcome(id), id, PING_LIFE_MILLIS, now.nanos());
            statistics.orderSent(id, now.nanos());
            send(frame, now);
        }
    }

    private void send(Frame frame, Moment now) {
        statistics.frameSent(FrameEncoder.length(frame), now.nanos());
        line.send(frame);
    }

    /** A frame came in. */
    public void heard(Frame frame) {
        Moment now = clock.get();
        noticeStandstill(now);
        for (Heard heard : session.hear(frame, now.nanos())) {
            if (heard instanceof Heard.Said said) {
                said(frame, said, now);
            } else if (heard instanceof Heard.Opened opened) {
                apply(new Stimulus.SessionOpened(opened.payload(), opened.session()));
            } else if (heard instanceof Heard.Lost lost) {
                apply(new Stimulus.SessionLost("Session lost: " + lost.why() + "." + wayBack(lost)));
            } else {
                strangers.sentence(heard, now.nanos()).ifPresent(words -> apply(new Stimulus.StrangerHeard(words)));
            }
        }
    }

    private static String wayBack(Heard.Lost lost) {
        return lost.reopens() ? "" : " Agree with its operator who has the payload; Reconnect takes it back.";
    }

    private void said(Frame frame, Heard.Said said, Moment now) {
        statistics.frameHeard(said.header(), FrameEncoder.length(frame), now.nanos());
        if (said.message() instanceof Outcome outcome) {
            statistics.outcomeHeard(outcome.orderId(), said.header(), now.nanos());
        } else if (said.message() instanceof Status status) {
            statistics.refusedOnBoard(status.refusedFrames());
        }
        apply(new Stimulus.Heard(frame, said.message()));
    }

    /** Records and folds one stimulus, and whatever its effects bring about, in order. */
    private void apply(Stimulus stimulus) {
        waiting.add(stimulus);
        if (folding) {
            return;
        }
        folding = true;
        try {
            while (!waiting.isEmpty()) {
                Stimulus next = waiting.remove();
                Moment now = clock.get();
                recorder.append(now, next);
                Desk.Step step = Desk.fold(state, now, next);
                state = step.state();
                step.effects().forEach(effect -> carryOut(effect, now));
            }
        } finally {
            folding = false;
        }
    }

    private void carryOut(Effect effect, Moment now) {
        if (effect instanceof Effect.Sound sound) {
            sounds.accept(sound.cue());
        } else if (effect instanceof Effect.Send send) {
            switch (send.urgency()) {
                case AHEAD, IN_TURN -> {
                    if (!waitingForDisk.contains(send.orderId())) {
                        seal(send, now);
                    }
                }
                case DURABLE_FIRST -> sealOnceDurable(send, now);
            }
        }
    }

    private void sealOnceDurable(Effect.Send send, Moment now) {
        if (send.orderId() != 0) {
            waitingForDisk.add(send.orderId());
        }
        recorder.whenDurable(
                () -> {
                    waitingForDisk.remove(send.orderId());
                    seal(send, now);
                },
                sentence -> {
                    waitingForDisk.remove(send.orderId());
                    journalFailed(send, sentence);
                });
    }

    private void journalFailed(Effect.Send send, String sentence) {
        notSent(send, "the journal cannot be written");
        journalChanged(false, sentence);
    }

    private void seal(Effect.Send send, Moment issued) {
        Moment now = clock.get();
        long waited = now.millisSince(issued);
        if (!session.isOpen()) {
            notSent(send, "no session with the payload");
        } else if (send.order().isHazardous() && waited > LONGEST_WAIT_FOR_DISK_MILLIS) {
            notSent(send, "the disk took " + waited + " ms to keep the journal");
        } else {
            Frame frame = session.seal(send.order(), send.orderId(), send.lifeMillis() - waited, now.nanos());
            statistics.orderSent(send.orderId(), now.nanos());
            if (send.urgency() == Effect.Urgency.AHEAD) {
                statistics.frameSent(FrameEncoder.length(frame), now.nanos());
                line.sendUrgent(frame);
            } else {
                send(frame, now);
            }
        }
    }

    /** A hazardous order has not left if its first copy has not: a repetition that cannot leave changes nothing. */
    private void notSent(Effect.Send send, String why) {
        boolean isFirst = send.urgency() == Effect.Urgency.DURABLE_FIRST;
        if (send.orderId() != 0 && (isFirst || !send.order().isHazardous())) {
            apply(new Stimulus.NotSent(send.orderId(), why));
        }
    }
}
