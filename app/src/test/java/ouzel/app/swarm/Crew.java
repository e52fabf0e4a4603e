package ouzel.app.swarm;

import java.util.List;
import ouzel.app.desk.Act;
import ouzel.app.desk.Condition;
import ouzel.app.desk.Conditions;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Lane;
import ouzel.app.desk.Phase;
import ouzel.protocol.message.Sampler;

/** The crew of a post, who do what is sensible to get one sample after the other. */
final class Crew {
    private static final int HOLD_MILLIS = 800;
    private static final int RELOAD_MILLIS = 2_500;

    private Sampler goal = Sampler.AIR;
    private long armedMillis = -1;
    private long nextReloadMillis;
    private long nextAttestMillis;

    void strive(Sampler sampler) {
        goal = sampler;
        armedMillis = -1;
    }

    /** Looks at the desk and does at most one thing. */
    List<Act> look(DeskState desk, long nowMillis) {
        if (nowMillis >= nextAttestMillis && desk.session().open()) {
            nextAttestMillis = nowMillis + 20_000;
            return List.of(Condition.values()).stream()
                    .filter(condition -> condition.attestedForSeconds() > 0)
                    .<Act>map(condition -> new Act.Attest(condition, "deck crew"))
                    .toList();
        }
        Lane lane = desk.lane(goal);
        if (lane.phase() != Phase.ARMED) {
            armedMillis = -1;
        }
        return switch (lane.phase()) {
            case SAFE -> Conditions.mayArm(desk, goal) ? List.of(new Act.Arm(goal)) : List.of();
            case ARMED -> armed(nowMillis);
            case DONE, SPENT, FAULT -> reload(nowMillis);
            case UNKNOWN, DRAWING, STROKING -> List.of();
        };
    }

    private List<Act> armed(long nowMillis) {
        if (armedMillis < 0) {
            armedMillis = nowMillis;
        }
        return nowMillis - armedMillis >= HOLD_MILLIS ? List.of(new Act.Trigger(goal)) : List.of();
    }

    private List<Act> reload(long nowMillis) {
        if (nowMillis < nextReloadMillis) {
            return List.of();
        }
        nextReloadMillis = nowMillis + RELOAD_MILLIS;
        return List.of(new Act.Reload(goal));
    }
}
