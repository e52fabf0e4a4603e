package ouzel.simulator.controller;

import java.util.Optional;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.message.AcknowledgeEvents;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.ChangeSettings;
import ouzel.protocol.message.Confirm;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.FetchEvents;
import ouzel.protocol.message.KeepAlive;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.QueryOutcome;
import ouzel.protocol.message.ReadSettings;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Reload;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Settings;
import ouzel.protocol.message.Stop;
import ouzel.protocol.message.Trigger;
import ouzel.protocol.session.Envelope;

/**
 * Decides what becomes of a verified order: is it new, does it come in time, and who carries it out.
 *
 * <p>Orders that can change something are carried out at most once: their outcome is stored and answers every repeat.
 * An order to arm or to trigger without an id could not be told from its repeat and is not carried out.
 * {@link SafeAll} is the exception: it acts each time it comes.
 *
 * <p>{@link Stop} and {@link SafeAll} are obeyed whatever their expiry says: an authentic wish for the safe side is
 * never too late.
 */
final class Orders {
    private final NonVolatile memory;
    private final Limits limits;
    private final Samplers samplers;
    private final Arming arming;
    private final Recorder recorder;
    private final Outbox outbox;
    private final EventSender events;

    Orders(
            NonVolatile memory,
            Limits limits,
            Samplers samplers,
            Arming arming,
            Recorder recorder,
            Outbox outbox,
            EventSender events) {
        this.memory = memory;
        this.limits = limits;
        this.samplers = samplers;
        this.arming = arming;
        this.recorder = recorder;
        this.outbox = outbox;
        this.events = events;
    }

    /** Why an order's expiry keeps it from acting now; empty if it comes in time. */
    Optional<Outcome> untimely(Envelope envelope, long nowMillis) {
        // The wire clock is 32 bits wide: the signed difference is right across its wrap.
        int aheadMillis = (int) (envelope.expiresAtMillis() - nowMillis);
        int mostAhead = envelope.order().isHazardous() ? limits.hazardousAheadMillis() : limits.otherAheadMillis();
        if (aheadMillis < 0) {
            return Optional.of(refused(envelope.orderId(), Reason.ORDER_EXPIRED, -aheadMillis, 0));
        }
        return aheadMillis > mostAhead
                ? Optional.of(refused(envelope.orderId(), Reason.ORDER_FROM_FUTURE, aheadMillis, mostAhead))
                : Optional.empty();
    }

    /** Carries out, answers or refuses. {@code untimely} is the answer of {@link #untimely}. */
    void obey(Envelope envelope, Optional<Outcome> untimely, long nowMillis) {
        Order order = envelope.order();
        long id = envelope.orderId();
        if (order instanceof SafeAll) {
            samplers.safeAll(id, nowMillis);
        } else if (!isStored(order)) {
            if (untimely.isPresent()) {
                recorder.answer(untimely.get());
            } else {
                answer(order, id, nowMillis);
            }
        } else if (memory.outcomes().of(id).isPresent()) {
            recorder.answer(arming.current(memory.outcomes().of(id).get(), nowMillis));
        } else if (order instanceof Stop stop) {
            samplers.stop(stop.sampler(), id, nowMillis);
        } else if (untimely.isPresent()) {
            recorder.outcome(untimely.get());
        } else {
            carryOut(order, id, nowMillis);
        }
    }

    private void carryOut(Order order, long id, long nowMillis) {
        if (order.isHazardous() && id == 0) {
            return;
        }
        if (order instanceof Arm arm) {
            samplers.arm(arm, id, nowMillis);
        } else if (order instanceof Trigger trigger) {
            samplers.trigger(trigger, id, nowMillis);
        } else if (order instanceof Reload reload) {
            samplers.reload(reload.sampler(), id, nowMillis);
        } else if (order instanceof ChangeSettings change) {
            changeSettings(change.settings(), id, nowMillis);
        }
    }

    /** Orders that only ask or acknowledge: harmless to repeat, so nothing is stored for them. */
    private void answer(Order order, long id, long nowMillis) {
        if (order instanceof ReadSettings) {
            outbox.add(memory.settings());
        } else if (order instanceof AcknowledgeEvents acknowledge) {
            memory.events().acknowledge(acknowledge.upTo());
        } else if (order instanceof FetchEvents fetch) {
            events.fetch(fetch.from(), nowMillis);
        } else if (order instanceof QueryOutcome query) {
            recorder.answer(memory.outcomes()
                    .of(query.orderId())
                    .map(stored -> arming.current(stored, nowMillis))
                    .orElseGet(() -> Outcome.of(query.orderId(), Outcome.Stage.NEVER_SEEN)));
        }
        if (!(order instanceof KeepAlive || order instanceof Confirm)) {
            recorder.answer(Outcome.of(id, Outcome.Stage.COMPLETED));
        }
    }

    private void changeSettings(Settings asked, long id, long nowMillis) {
        if (samplers.active().isPresent()) {
            recorder.outcome(refused(id, Reason.BUSY, 0, 0));
            return;
        }
        Optional<Ceilings.Passed> passed = Ceilings.passed(asked, limits.ceilings());
        if (passed.isPresent()) {
            recorder.outcome(refused(
                    id,
                    Reason.SETTING_OVER_CEILING,
                    passed.get().asked(),
                    passed.get().allowed()));
            return;
        }
        memory.settings(asked);
        recorder.event(Event.Kind.SETTINGS_CHANGED, id, Reason.NONE, MessageCodec.settingsCheck(asked), nowMillis);
        recorder.outcome(Outcome.of(id, Outcome.Stage.COMPLETED));
        outbox.add(asked);
    }

    private static boolean isStored(Order order) {
        return order.isHazardous()
                || order instanceof Stop
                || order instanceof Reload
                || order instanceof ChangeSettings;
    }

    private static Outcome refused(long orderId, Reason reason, int measured, int limit) {
        return Outcome.because(orderId, Outcome.Stage.REFUSED, reason, measured, limit);
    }
}
