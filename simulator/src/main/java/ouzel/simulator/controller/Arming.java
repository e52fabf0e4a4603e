package ouzel.simulator.controller;

import java.util.Optional;
import java.util.function.LongSupplier;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Trigger;

/**
 * The one arming token: at most one exists, it is used at most once, and it lives no longer than it was granted for.
 *
 * <p>What became of the last token is remembered, so that a late trigger hears why it was refused.
 */
final class Arming {
    private final Recorder recorder;
    private final LongSupplier tokens;
    private Optional<Armed> armed = Optional.empty();
    private Optional<Armed> gone = Optional.empty();
    private Reason goneBecause = Reason.NONE;

    Arming(Recorder recorder, LongSupplier tokens) {
        this.recorder = recorder;
        this.tokens = tokens;
    }

    Optional<Armed> armed() {
        return armed;
    }

    boolean isArmed(Sampler sampler) {
        return armed.isPresent() && armed.get().sampler() == sampler;
    }

    /** Grants a token; an earlier one for the same sampler is void from now on. */
    void grant(Arm order, long orderId, int lifeMillis, long nowMillis) {
        long token = tokens.getAsLong();
        Armed granted =
                new Armed(order.sampler(), orderId, order.dose(), order.attested(), token, nowMillis, lifeMillis);
        armed = Optional.of(granted);
        recorder.event(Event.Kind.ARMED, order.sampler(), orderId, Reason.NONE, lifeMillis, nowMillis);
        recorder.outcome(Outcome.armed(orderId, token, lifeMillis));
    }

    /** Takes the token away; {@code value} goes into the event. */
    void disarm(Reason reason, int value, long nowMillis) {
        armed.ifPresent(was -> {
            forget(was, reason);
            recorder.event(Event.Kind.DISARMED, was.sampler(), was.orderId(), reason, value, nowMillis);
        });
    }

    /** Ends a token whose life is over. */
    void expire(long nowMillis) {
        if (armed.isPresent() && armed.get().isOver(nowMillis)) {
            disarm(Reason.TOKEN_EXPIRED, 0, nowMillis);
        }
    }

    /** Uses up the token. */
    void use(Armed used) {
        forget(used, Reason.WRONG_TOKEN);
    }

    /** Why {@code order} does not hold the one token that lives; empty if it does. */
    Optional<Outcome> refusal(Trigger order, long orderId, long nowMillis) {
        if (!isArmed(order.sampler())) {
            return Optional.of(notArmed(order, orderId, nowMillis));
        }
        Armed held = armed.orElseThrow();
        if (held.token() != order.token()) {
            return Optional.of(refused(orderId, Reason.WRONG_TOKEN, 0, 0));
        }
        return held.isOver(nowMillis) ? Optional.of(expired(held, orderId, nowMillis)) : Optional.empty();
    }

    /** {@code stored} as it is true now: the token in it only while it lives, with the life it has left. */
    Outcome current(Outcome stored, long nowMillis) {
        if (stored.tokenLifeMillis() == 0) {
            return stored;
        }
        if (armed.isPresent() && armed.get().orderId() == stored.orderId()) {
            int left = armed.get().lifeLeftMillis(nowMillis);
            return Outcome.armed(stored.orderId(), left == 0 ? 0 : armed.get().token(), left);
        }
        return Outcome.of(stored.orderId(), stored.stage());
    }

    private Outcome notArmed(Trigger order, long orderId, long nowMillis) {
        boolean knowsIt = gone.isPresent()
                && gone.get().sampler() == order.sampler()
                && gone.get().token() == order.token();
        if (knowsIt && goneBecause == Reason.TOKEN_EXPIRED) {
            return expired(gone.get(), orderId, nowMillis);
        }
        Reason reason = knowsIt && goneBecause == Reason.WRONG_TOKEN ? Reason.WRONG_TOKEN : Reason.NOT_ARMED;
        return refused(orderId, reason, 0, 0);
    }

    private void forget(Armed was, Reason why) {
        armed = Optional.empty();
        gone = Optional.of(was);
        goneBecause = why;
    }

    private static Outcome expired(Armed was, long orderId, long nowMillis) {
        return refused(orderId, Reason.TOKEN_EXPIRED, was.ageMillis(nowMillis), was.lifeMillis());
    }

    private static Outcome refused(long orderId, Reason reason, int measured, int limit) {
        return Outcome.because(orderId, Outcome.Stage.REFUSED, reason, measured, limit);
    }
}
