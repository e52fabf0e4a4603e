package ouzel.app.flight;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import ouzel.app.desk.Act;
import ouzel.app.desk.Condition;
import ouzel.app.desk.Conditions;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Lane;
import ouzel.app.desk.OrderTrack;
import ouzel.app.desk.Phase;
import ouzel.protocol.message.Sampler;
import ouzel.simulator.plant.Surroundings.Place;

/**
 * An operator who sees only what the desk shows and works through a list of samplers: asks the pilot, hears what must
 * be confirmed, arms, holds the trigger, waits for the sample.
 *
 * <p>A sampler that is refused is tried again; one that brings no sample in its time is left, which is a result too.
 */
final class ScriptedOperator {
    /** Time a person takes to read before acting, ms. */
    private static final long READING_MILLIS = 1_000;
    /** Time the trigger is held, ms. */
    private static final long HOLD_MILLIS = 800;
    /** Time after which a sampler is given up, ms. */
    private static final long PATIENCE_MILLIS = 180_000;

    private static final List<Condition> TOLD_BY_PEOPLE =
            List.of(Condition.PILOT_SAYS_STOPPED, Condition.SERVICES_CHECKED, Condition.PEOPLE_CLEAR);

    /** What the operator can reach. */
    interface Hands {
        void act(Act act);

        void askPilot(Place place);

        boolean isPilotSettled();
    }

    private enum Step {
        GOING,
        CHECKING,
        ARMING,
        HOLDING,
        WATCHING
    }

    private final Hands hands;
    private final Deque<Sampler> owed;
    private Step step = Step.GOING;
    private long stepSinceMillis;
    private long samplerSinceMillis;
    private int samplesBefore;
    private boolean asked;

    ScriptedOperator(Hands hands, List<Sampler> owed) {
        this.hands = hands;
        this.owed = new ArrayDeque<>(owed);
    }

    /** True once every sampler has been worked through. */
    boolean isDone() {
        return owed.isEmpty();
    }

    /** Looks at the desk and does at most one thing. */
    void look(DeskState desk, long nowMillis) {
        Sampler sampler = owed.peek();
        if (sampler == null) {
            return;
        }
        if (nowMillis - samplerSinceMillis > PATIENCE_MILLIS) {
            hands.act(new Act.SafeAll());
            next(nowMillis);
            return;
        }
        Lane lane = desk.lane(sampler);
        switch (step) {
            case GOING -> going(desk, sampler, nowMillis);
            case CHECKING -> checking(desk, sampler, nowMillis);
            case ARMING -> arming(lane, nowMillis);
            case HOLDING -> holding(lane, nowMillis);
            case WATCHING -> watching(desk, lane, nowMillis);
        }
    }

    private void going(DeskState desk, Sampler sampler, long nowMillis) {
        if (!asked) {
            hands.askPilot(
                    switch (sampler) {
                        case AIR -> Place.ALOFT;
                        case WATER -> Place.AFLOAT;
                        case SOIL -> Place.ON_GROUND;
                    });
            asked = true;
            samplesBefore = desk.samples().size();
        } else if (hands.isPilotSettled() && desk.isLinkFresh()) {
            go(Step.CHECKING, nowMillis);
        }
    }

    private void checking(DeskState desk, Sampler sampler, long nowMillis) {
        if (nowMillis - stepSinceMillis < READING_MILLIS) {
            return;
        }
        Optional<Condition> untold = TOLD_BY_PEOPLE.stream()
                .filter(condition -> condition.concerns(sampler))
                .filter(condition -> desk.attestations().stream().noneMatch(known -> known.condition() == condition))
                .findFirst();
        if (untold.isPresent()) {
            hands.act(new Act.Attest(untold.get(), "rehearsal crew"));
        } else if (desk.lane(sampler).phase() == Phase.SAFE && Conditions.mayArm(desk, sampler)) {
            hands.act(new Act.Arm(sampler));
            go(Step.ARMING, nowMillis);
        }
    }

    private void arming(Lane lane, long nowMillis) {
        if (lane.phase() == Phase.ARMED && lane.token() != 0) {
            go(Step.HOLDING, nowMillis);
        } else if (hasFailed(lane.arm())) {
            go(Step.CHECKING, nowMillis);
        }
    }

    private void holding(Lane lane, long nowMillis) {
        if (nowMillis - stepSinceMillis < HOLD_MILLIS) {
            return;
        }
        hands.act(new Act.Trigger(lane.sampler()));
        go(Step.WATCHING, nowMillis);
    }

    private void watching(DeskState desk, Lane lane, long nowMillis) {
        if (desk.samples().size() > samplesBefore) {
            next(nowMillis);
        } else if (lane.phase() == Phase.SAFE && nowMillis - stepSinceMillis > 3 * READING_MILLIS) {
            // Refused or run out: nothing moved, and the payload says it is safe.
            go(Step.CHECKING, nowMillis);
        }
    }

    private static boolean hasFailed(Optional<OrderTrack> track) {
        return track.filter(known -> known.stage().isFinal() && known.stage() != OrderTrack.Stage.COMPLETED)
                .isPresent();
    }

    private void next(long nowMillis) {
        owed.remove();
        asked = false;
        samplerSinceMillis = nowMillis;
        go(Step.GOING, nowMillis);
    }

    private void go(Step next, long nowMillis) {
        step = next;
        stepSinceMillis = nowMillis;
    }
}
