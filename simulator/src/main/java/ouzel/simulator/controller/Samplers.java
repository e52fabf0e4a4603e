package ouzel.simulator.controller;

import java.util.List;
import java.util.Optional;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Settings;
import ouzel.protocol.message.Trigger;
import ouzel.simulator.plant.Outputs;

/**
 * The three samplers: who is armed, what acts, what is used. All outputs follow from the one act there may be.
 *
 * <pre>
 * SAFE      arm, every check holds             ARMED
 * ARMED     trigger with the token             DRAWING or STROKING
 * ARMED     stop, safe-all, expiry, silence,
 *           a permissive trips, new session    SAFE
 * DRAWING   see {@link PumpedDraw}               DONE, SPENT or FAULT
 * STROKING  see {@link SoilStroke}               DONE, SPENT or FAULT
 * used      reload                             SAFE
 * </pre>
 */
final class Samplers {
    private static final int PROGRESS_MILLIS = 500;

    private final NonVolatile memory;
    private final Limits limits;
    private final Instruments instruments;
    private final PermissiveWatch watch;
    private final Recorder recorder;
    private final Arming arming;
    private final VentHold vent;
    private Optional<Act> act = Optional.empty();
    private int lastMetered;
    private long progressAtMillis;

    Samplers(
            NonVolatile memory,
            Limits limits,
            Instruments instruments,
            PermissiveWatch watch,
            Recorder recorder,
            Arming arming,
            VentHold vent) {
        this.memory = memory;
        this.limits = limits;
        this.instruments = instruments;
        this.watch = watch;
        this.recorder = recorder;
        this.arming = arming;
        this.vent = vent;
    }

    Outputs outputs() {
        return act.isPresent() ? act.get().outputs() : Outputs.OFF;
    }

    Optional<Act> act() {
        return act;
    }

    Optional<Armed> armed() {
        return arming.armed();
    }

    /** The sampler that is armed or acts. */
    Optional<Sampler> active() {
        return act.map(Act::sampler).or(() -> arming.armed().map(Armed::sampler));
    }

    /** Bits a person has attested for the sampler that is armed or acts. */
    int attested() {
        return act.map(Act::attested)
                .or(() -> arming.armed().map(Armed::attested))
                .orElse(0);
    }

    /** True while at most one sampler is armed or acts. */
    boolean isOneAlone() {
        return act.isEmpty() || arming.armed().isEmpty();
    }

    SamplerState state(Sampler sampler) {
        if (act.isPresent() && act.get().sampler() == sampler) {
            return sampler.isPumped() ? SamplerState.DRAWING : SamplerState.STROKING;
        }
        return arming.isArmed(sampler) ? SamplerState.ARMED : memory.use(sampler);
    }

    List<SamplerState> states() {
        return List.of(state(Sampler.WATER), state(Sampler.AIR), state(Sampler.SOIL));
    }

    int strokesLeft() {
        return Math.max(0, memory.settings().strokesPerCartridge() - memory.strokesUsed());
    }

    /** Dose metered in the running or last draw, mL. */
    int metered(long nowMillis) {
        return act.isPresent() && act.get() instanceof PumpedDraw draw ? draw.metered(nowMillis) : lastMetered;
    }

    /** Time since the running pump or valve was switched on, ms; 0 if nothing acts. */
    long runMillis(long nowMillis) {
        return act.isPresent() ? act.get().runMillis(nowMillis) : 0;
    }

    void arm(Arm order, long orderId, long nowMillis) {
        Optional<Outcome> refusal = armRefusal(order, orderId)
                .or(() -> watch.againstArming(order.sampler(), order.attested(), nowMillis)
                        .map(unmet -> unmet.refused(orderId)));
        if (refusal.isPresent()) {
            recorder.outcome(refusal.get());
        } else {
            arming.grant(order, orderId, memory.settings().armLifetimeMillis(), nowMillis);
        }
    }

    void trigger(Trigger order, long orderId, long nowMillis) {
        Optional<Outcome> refusal = arming.refusal(order, orderId, nowMillis)
                .or(() -> watch.againstTrigger(order.sampler(), attested(), nowMillis)
                        .map(unmet -> unmet.refused(orderId)));
        if (refusal.isPresent()) {
            recorder.outcome(refusal.get());
        } else {
            start(arming.armed().orElseThrow(), orderId, nowMillis);
        }
    }

    /** Ends what {@code sampler} does and disarms it. */
    void stop(Sampler sampler, long orderId, long nowMillis) {
        if (arming.isArmed(sampler)) {
            arming.disarm(Reason.BY_STOP, 0, nowMillis);
        }
        if (act.isPresent() && act.get().sampler() == sampler) {
            endAct(Reason.BY_STOP, 0, 0, nowMillis);
        }
        recorder.outcome(Outcome.of(orderId, Outcome.Stage.COMPLETED));
    }

    /** Everything off and disarmed, before this returns. */
    void safeAll(long orderId, long nowMillis) {
        boolean isNew = orderId != 0 && memory.outcomes().of(orderId).isEmpty();
        boolean isNews = isNew || arming.armed().isPresent() || !outputs().isAllOff();
        arming.disarm(Reason.BY_SAFE_ALL, 0, nowMillis);
        endAct(Reason.BY_SAFE_ALL, 0, 0, nowMillis);
        if (isNews) {
            recorder.event(Event.Kind.SAFED, orderId, Reason.BY_SAFE_ALL, 0, nowMillis);
        }
        recorder.outcome(Outcome.of(orderId, Outcome.Stage.COMPLETED));
    }

    void reload(Sampler sampler, long orderId, long nowMillis) {
        if (active().filter(sampler::equals).isPresent()) {
            recorder.outcome(refused(orderId, Reason.BUSY, 0, 0));
            return;
        }
        memory.use(sampler, SamplerState.SAFE);
        if (sampler == Sampler.SOIL) {
            memory.freshCartridge();
        }
        recorder.event(Event.Kind.RELOADED, sampler, orderId, Reason.NONE, 0, nowMillis);
        recorder.outcome(Outcome.of(orderId, Outcome.Stage.COMPLETED));
    }

    /** The console is no longer heard, or another has come: disarms, and ends a draw that may not finish alone. */
    void abandon(Reason reason, int measured, int limit, long nowMillis) {
        arming.disarm(reason, 0, nowMillis);
        if (act.isPresent() && !act.get().finishesAlone()) {
            endAct(reason, measured, limit, nowMillis);
        }
    }

    /** One step of whatever is armed or acts. */
    void step(long nowMillis) {
        arming.armed()
                .flatMap(held -> watch.tripped(held.sampler(), ~0, nowMillis))
                .ifPresent(unmet ->
                        arming.disarm(Reason.PERMISSIVE, unmet.permissive().code(), nowMillis));
        if (act.isPresent()) {
            act.get().step(instruments, watch, nowMillis).ifPresent(ending -> finish(ending, nowMillis));
            progress(nowMillis);
        }
    }

    private Optional<Outcome> armRefusal(Arm order, long orderId) {
        Sampler sampler = order.sampler();
        if (!instruments.has(fitting(sampler))) {
            return Optional.of(refused(orderId, Reason.NOT_FITTED, 0, 0));
        }
        if (act.isPresent() && act.get().sampler() == sampler) {
            return Optional.of(refused(orderId, Reason.BUSY, 0, 0));
        }
        if (active().isPresent() && active().get() != sampler) {
            return Optional.of(refused(orderId, Reason.OTHER_ACTIVE, 0, 0));
        }
        if (memory.use(sampler) == SamplerState.FAULT) {
            return Optional.of(refused(orderId, Reason.SAMPLER_FAULT, 0, 0));
        }
        if (memory.use(sampler).isUsed()) {
            return Optional.of(refused(orderId, Reason.SAMPLER_USED, 0, 0));
        }
        int allowed = doseAllowed(sampler);
        return order.dose() > allowed
                ? Optional.of(refused(orderId, Reason.DOSE_OVER_LIMIT, order.dose(), allowed))
                : Optional.empty();
    }

    private int doseAllowed(Sampler sampler) {
        Settings settings = memory.settings();
        return Math.min(settings.doseLimit(sampler), limits.ceilings().doseLimit(sampler));
    }

    private void start(Armed used, long orderId, long nowMillis) {
        Sampler sampler = used.sampler();
        arming.use(used);
        recorder.outcome(Outcome.of(orderId, Outcome.Stage.ACCEPTED));
        memory.use(sampler, SamplerState.SPENT);
        memory.beginActing(sampler, orderId);
        progressAtMillis = nowMillis;
        if (sampler == Sampler.SOIL) {
            memory.countStroke();
            act = Optional.of(new SoilStroke(used, orderId, limits.stroke(), nowMillis));
        } else {
            act = Optional.of(new PumpedDraw(used, orderId, memory.settings(), limits, nowMillis));
        }
        Event.Kind kind = sampler.isPumped() ? Event.Kind.DRAW_STARTED : Event.Kind.STROKE_STARTED;
        recorder.event(kind, sampler, orderId, Reason.NONE, used.dose(), nowMillis);
        recorder.outcome(Outcome.of(orderId, Outcome.Stage.STARTED));
    }

    private void endAct(Reason reason, int measured, int limit, long nowMillis) {
        act.flatMap(running -> running.stop(reason, measured, limit, nowMillis))
                .ifPresent(ending -> finish(ending, nowMillis));
    }

    private void finish(Ending ending, long nowMillis) {
        Act ended = act.orElseThrow();
        Outcome outcome = ending.outcome();
        lastMetered = metered(nowMillis);
        act = Optional.empty();
        recorder.outcome(outcome);
        recorder.event(ending.kind(), ended.sampler(), ended.orderId(), outcome.reason(), ending.value(), nowMillis);
        if (ending.state() == SamplerState.FAULT) {
            recorder.event(
                    Event.Kind.FAULT,
                    ended.sampler(),
                    ended.orderId(),
                    outcome.reason(),
                    outcome.measured(),
                    nowMillis);
        }
        memory.use(ended.sampler(), ending.state());
        memory.endActing();
        if (ended.sampler() == Sampler.SOIL) {
            vent.vented(nowMillis);
        }
    }

    private void progress(long nowMillis) {
        if (act.isPresent()
                && act.get() instanceof PumpedDraw draw
                && nowMillis - progressAtMillis >= PROGRESS_MILLIS) {
            progressAtMillis = nowMillis;
            recorder.outcome(Outcome.because(
                    draw.orderId(), Outcome.Stage.PROGRESS, Reason.NONE, draw.metered(nowMillis), draw.dose()));
        }
    }

    private static Capability fitting(Sampler sampler) {
        return switch (sampler) {
            case WATER -> Capability.WATER_SAMPLER;
            case AIR -> Capability.AIR_SAMPLER;
            case SOIL -> Capability.SOIL_SAMPLER;
        };
    }

    private static Outcome refused(long orderId, Reason reason, int measured, int limit) {
        return Outcome.because(orderId, Outcome.Stage.REFUSED, reason, measured, limit);
    }
}
