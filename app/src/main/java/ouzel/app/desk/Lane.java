package ouzel.app.desk;

import java.util.Optional;
import ouzel.protocol.message.Sampler;

/**
 * One sampler on the desk.
 *
 * @param sampler which
 * @param phase what it is doing, as far as is known
 * @param dose the amount that arming asks for, in the unit of {@link ouzel.protocol.message.Arm#dose()}
 * @param arm the last arm order
 * @param trigger the last trigger order
 * @param other the last stop or reload order
 * @param token the arming token, 0 if none is held
 * @param armedUntil when the token runs out, as far as the console knows; empty if none is held
 * @param draw the running or last draw of a pumped sampler
 * @param stroke the running or last stroke of the soil probe
 */
public record Lane(
        Sampler sampler,
        Phase phase,
        int dose,
        Optional<OrderTrack> arm,
        Optional<OrderTrack> trigger,
        Optional<OrderTrack> other,
        long token,
        Optional<Moment> armedUntil,
        Optional<Draw> draw,
        Optional<Stroke> stroke) {

    static Lane fresh(Sampler sampler, int dose) {
        return new Lane(
                sampler,
                Phase.UNKNOWN,
                dose,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                0,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    Lane withPhase(Phase next) {
        return new Lane(sampler, next, dose, arm, trigger, other, token, armedUntil, draw, stroke);
    }

    Lane withDose(int next) {
        return new Lane(sampler, phase, next, arm, trigger, other, token, armedUntil, draw, stroke);
    }

    Lane withArm(OrderTrack next) {
        return new Lane(sampler, phase, dose, Optional.of(next), trigger, other, token, armedUntil, draw, stroke);
    }

    Lane withTrigger(OrderTrack next) {
        return new Lane(sampler, phase, dose, arm, Optional.of(next), other, token, armedUntil, draw, stroke);
    }

    Lane withOther(OrderTrack next) {
        return new Lane(sampler, phase, dose, arm, trigger, Optional.of(next), token, armedUntil, draw, stroke);
    }

    Lane withToken(long next, Optional<Moment> until) {
        return new Lane(sampler, phase, dose, arm, trigger, other, next, until, draw, stroke);
    }

    Lane withDraw(Draw next) {
        return new Lane(sampler, phase, dose, arm, trigger, other, token, armedUntil, Optional.of(next), stroke);
    }

    Lane withStroke(Stroke next) {
        return new Lane(sampler, phase, dose, arm, trigger, other, token, armedUntil, draw, Optional.of(next));
    }

    /** True if an order of this lane was sent and nobody has told yet what became of it. */
    public boolean isUnresolved() {
        return isUnknown(arm) || isUnknown(trigger) || isUnknown(other);
    }

    private static boolean isUnknown(Optional<OrderTrack> track) {
        return track.filter(known -> known.stage() == OrderTrack.Stage.UNKNOWN).isPresent();
    }
}
