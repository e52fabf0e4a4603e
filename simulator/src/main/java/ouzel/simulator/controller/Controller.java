package ouzel.simulator.controller;

import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Stop;
import ouzel.protocol.session.Envelope;
import ouzel.simulator.plant.Outputs;
import ouzel.simulator.plant.Sensed;

/**
 * The authority on board: nothing moves unless this allows it, whatever the console believes.
 *
 * <p>It is given verified orders, one set of readings every {@link #STEP_MILLIS} ms and the time, and gives outputs and
 * messages. A new controller over the same {@link NonVolatile} is a restart: all outputs off, all safe, no session.
 *
 * <p>Time is ms since this power-up, as on the wire; it never goes back. Not thread-safe: one owner calls everything.
 */
public final class Controller {
    /** Time between two calls of {@link #step}, ms. */
    public static final int STEP_MILLIS = 10;

    private final NonVolatile memory;
    private final Instruments instruments;
    private final SelfTest selfTest;
    private final PermissiveWatch watch;
    private final DeadMan deadMan;
    private final VentHold vent;
    private final Arming arming;
    private final Samplers samplers;
    private final Recorder recorder;
    private final Orders orders;
    private final Account account;
    private final Telemetry telemetry;
    private final EventSender events;
    private final Outbox outbox = new Outbox();

    /**
     * Starts the controller over its memory and records the start; what was acting when the power went is recorded as
     * failed, and its sampler stays spent.
     *
     * @param memory what survived
     * @param limits what no order can pass
     * @param tokens arming tokens: 64 bits nobody can foresee
     * @param capabilities bits of {@link ouzel.protocol.message.Capability}
     * @param cause why it starts
     */
    public Controller(NonVolatile memory, Limits limits, LongSupplier tokens, int capabilities, BootCause cause) {
        this.memory = memory;
        instruments = new Instruments(capabilities, limits);
        selfTest = new SelfTest();
        watch = new PermissiveWatch(instruments, limits);
        deadMan = new DeadMan(limits.keepAliveMillis());
        vent = new VentHold(memory, limits.ventHoldSeconds());
        recorder = new Recorder(memory, outbox);
        arming = new Arming(recorder, tokens);
        samplers = new Samplers(memory, limits, instruments, watch, recorder, arming, vent);
        events = new EventSender(memory.events(), outbox);
        orders = new Orders(memory, limits, samplers, arming, recorder, outbox, events);
        account = new Account(memory, capabilities, instruments, watch, samplers);
        telemetry = new Telemetry(account, outbox, instruments, events);
        boot(cause);
    }

    /** Takes the newest readings, moves everything on by one step, and gives what is to be driven from now on. */
    public Outputs step(long nowMillis, Sensed sensed) {
        instruments.take(sensed, ownAccount(nowMillis), nowMillis);
        selfTest.step(instruments, nowMillis);
        watch.step(samplers.outputs().isAllOff(), nowMillis);
        vent.step(nowMillis);
        expire(nowMillis);
        samplers.step(nowMillis);
        Outputs outputs = samplers.outputs();
        telemetry.step(outputs, account.isInSession(), nowMillis);
        return outputs;
    }

    /**
     * Takes one order whose tag and counter the link session has proven. Its expiry is judged here, on this clock.
     *
     * <p>Safe-all and stop are obeyed before this returns, in every state and whatever their expiry; safe-all even if
     * it is a repeat. Without an open session nothing else is listened to. Every order in time sets the dead-man back.
     */
    public void accept(Envelope envelope, long nowMillis) {
        expire(nowMillis);
        boolean isSafeWish = envelope.order() instanceof SafeAll || envelope.order() instanceof Stop;
        if (!account.isInSession() && !isSafeWish) {
            return;
        }
        Optional<Outcome> untimely = orders.untimely(envelope, nowMillis);
        if (untimely.isEmpty()) {
            deadMan.heard(nowMillis);
        }
        orders.obey(envelope, untimely, nowMillis);
    }

    /**
     * A new session is in force and the former one is void: what is armed goes safe, a running draw finishes alone or
     * stops as the settings say, and a stroke completes.
     *
     * @param session its public number, not 0
     */
    public void sessionOpened(long session, long nowMillis) {
        expire(nowMillis);
        samplers.abandon(Reason.NEW_SESSION, 0, 0, nowMillis);
        account.sessionOpened(session);
        deadMan.heard(nowMillis);
        recorder.event(Event.Kind.SESSION_OPENED, 0, Reason.NONE, 0, nowMillis);
        events.fetch(0, nowMillis);
        telemetry.introduce(nowMillis);
    }

    /** Frames the link session has refused since start, for the status. */
    public void framesRefused(int total) {
        account.framesRefused(total);
    }

    /** What is driven now; after a safe-all this is all off before the next step. */
    public Outputs outputs() {
        return samplers.outputs();
    }

    /** The most urgent message waiting, which then waits no longer. */
    public Optional<Downlink> poll() {
        return outbox.poll();
    }

    /** All messages waiting, most urgent first. */
    public List<Downlink> drain() {
        return outbox.drain();
    }

    /** Messages that had to make room because nobody took them, since start. */
    public long messagesDropped() {
        return outbox.dropped();
    }

    private Instruments.OwnAccount ownAccount(long nowMillis) {
        return new Instruments.OwnAccount(
                selfTest.hasPassed(), samplers.isOneAlone(), vent.sinceSeconds(nowMillis), samplers.strokesLeft());
    }

    private void expire(long nowMillis) {
        arming.expire(nowMillis);
        if (samplers.active().isPresent() && deadMan.losesNow(nowMillis)) {
            int silence = deadMan.silenceMillis(nowMillis);
            recorder.event(Event.Kind.KEEP_ALIVE_LOST, 0, Reason.KEEP_ALIVE_LOST, silence, nowMillis);
            samplers.abandon(Reason.KEEP_ALIVE_LOST, silence, deadMan.limitMillis(), nowMillis);
        }
    }

    private void boot(BootCause cause) {
        memory.countBoot();
        recorder.event(Event.Kind.BOOTED, 0, Reason.NONE, cause.code(), 0);
        memory.acting().ifPresent(this::recordInterrupted);
    }

    private void recordInterrupted(NonVolatile.Acting was) {
        Optional<Outcome> last = memory.outcomes().of(was.orderId());
        int measured = last.map(Outcome::measured).orElse(0);
        int limit = last.map(Outcome::limit).orElse(0);
        recorder.outcome(Outcome.because(was.orderId(), Outcome.Stage.FAILED, Reason.RESTARTED, measured, limit));
        Event.Kind kind = was.sampler().isPumped() ? Event.Kind.DRAW_ENDED_EARLY : Event.Kind.STROKE_FAILED;
        recorder.event(kind, was.sampler(), was.orderId(), Reason.RESTARTED, measured, 0);
        memory.use(was.sampler(), SamplerState.SPENT);
        memory.endActing();
    }
}
