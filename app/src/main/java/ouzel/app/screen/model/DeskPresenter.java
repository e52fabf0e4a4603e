package ouzel.app.screen.model;

import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import ouzel.app.desk.ConditionRow;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Lane;
import ouzel.app.desk.Phase;
import ouzel.protocol.message.Sampler;

/** Turns the desk's state into what the screen shows: the only place that knows both. Pure. */
public final class DeskPresenter {
    private final Judgement judgement;
    private final ZoneId zone;

    /**
     * @param judgement where conditions are judged
     * @param zone the zone that clock times are shown in
     */
    public DeskPresenter(Judgement judgement, ZoneId zone) {
        this.judgement = judgement;
        this.zone = zone;
    }

    /**
     * The whole desk.
     *
     * @param state the newest state
     * @param silentMillis how long ago the desk gave its newest state, ms: a desk that stopped must not look alive
     */
    public DeskView view(DeskState state, long silentMillis) {
        List<LaneView> lanes = Arrays.stream(Sampler.values())
                .map(sampler -> lane(state, sampler, silentMillis))
                .toList();
        Freshness freshness = new Freshness(state, silentMillis);
        return new DeskView(
                HeaderPresenter.view(freshness, batteryHolds(state)),
                lanes,
                firstLane(state, DeskPresenter::mayTrigger).filter(sampler -> freshness.isFresh()),
                firstLane(state, lane -> lane.phase().isActing())
                        .or(() -> firstLane(state, lane -> lane.phase() == Phase.ARMED))
                        .or(() -> firstLane(state, LanePresenter::isStoppable)));
    }

    private LaneView lane(DeskState state, Sampler sampler, long silentMillis) {
        return LanePresenter.view(
                new Freshness(state, silentMillis), state.lane(sampler), judgement.rows(state, sampler), zone);
    }

    private boolean batteryHolds(DeskState state) {
        return judgement.rows(state, Sampler.WATER).stream()
                .filter(row -> row.condition() == ouzel.app.desk.Condition.BATTERY)
                .noneMatch(row -> row.holding() == ConditionRow.Holding.UNMET);
    }

    private static boolean mayTrigger(Lane lane) {
        return lane.phase() == Phase.ARMED
                && lane.trigger().filter(LanePresenter::isWaiting).isEmpty();
    }

    private static Optional<Sampler> firstLane(DeskState state, Predicate<Lane> which) {
        return state.lanes().stream().filter(which).map(Lane::sampler).findFirst();
    }
}
