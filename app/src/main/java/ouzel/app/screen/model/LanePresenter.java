package ouzel.app.screen.model;

import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ouzel.app.desk.ConditionRow;
import ouzel.app.desk.Lane;
import ouzel.app.desk.OrderTrack;
import ouzel.app.desk.Phase;
import ouzel.app.desk.Sample;
import ouzel.protocol.message.Sampler;

/** One sampler's lane. */
final class LanePresenter {
    private LanePresenter() {}

    static LaneView view(Freshness freshness, Lane lane, List<ConditionRow> rows, ZoneId zone) {
        Phase phase = freshness.isDeskSilent() ? Phase.UNKNOWN : lane.phase();
        return new LaneView(
                lane.sampler(),
                badge(freshness, lane, phase),
                new LaneView.Dose(lane.dose(), Words.unit(lane.sampler()), isDoseEditable(lane, phase)),
                ControlsPresenter.view(freshness, lane, phase, rows),
                LadderPresenter.view(rows),
                OrderPresenter.view(lane, zone),
                AmountPresenter.fill(freshness, lane),
                AmountPresenter.facts(freshness, lane),
                PlotPresenter.view(lane, freshness.isFresh()),
                lastSample(freshness, lane.sampler()),
                caution(lane.sampler()));
    }

    /** True while something may still come of an order, so that the next one waits. */
    static boolean isWaiting(OrderTrack track) {
        return track.isOpen();
    }

    /** True if stopping this lane may change anything. */
    static boolean isStoppable(Lane lane) {
        return lane.phase() == Phase.ARMED
                || lane.phase().isActing()
                || lane.isUnresolved()
                || lane.trigger().filter(LanePresenter::isWaiting).isPresent()
                || lane.arm().filter(LanePresenter::isWaiting).isPresent();
    }

    private static boolean isDoseEditable(Lane lane, Phase phase) {
        return phase != Phase.ARMED
                && !phase.isActing()
                && lane.arm().filter(LanePresenter::isWaiting).isEmpty();
    }

    private static LaneView.Badge badge(Freshness freshness, Lane lane, Phase phase) {
        return switch (phase) {
            case UNKNOWN ->
                new LaneView.Badge(
                        LaneView.Shape.UNKNOWN,
                        phase.word(),
                        lane.isUnresolved() ? "asking" : freshness.ageIfStale(),
                        lane.isUnresolved() ? Attention.ALARM : Attention.NOTICE);
            case SAFE -> new LaneView.Badge(LaneView.Shape.REST, phase.word(), "", Attention.CALM);
            case ARMED ->
                new LaneView.Badge(LaneView.Shape.ARMED, phase.word(), armedLeft(freshness, lane), Attention.NOTICE);
            case DRAWING -> new LaneView.Badge(LaneView.Shape.MOVING, phase.word(), runFor(lane), Attention.ACTIVE);
            case STROKING -> new LaneView.Badge(LaneView.Shape.MOVING, phase.word(), "", Attention.ACTIVE);
            case DONE -> new LaneView.Badge(LaneView.Shape.DONE, phase.word(), "", Attention.CALM);
            case SPENT -> new LaneView.Badge(LaneView.Shape.SPENT, phase.word(), "", Attention.NOTICE);
            case FAULT -> new LaneView.Badge(LaneView.Shape.FAULT, phase.word(), "", Attention.ALARM);
        };
    }

    private static String armedLeft(Freshness freshness, Lane lane) {
        return lane.armedUntil()
                .map(until -> until.secondsSince(freshness.state().now()) - freshness.silentMillis() / 1000.0)
                .map(left -> String.format(Locale.ROOT, "%.0f s", Math.ceil(Math.max(0, left))))
                .orElse("");
    }

    private static String runFor(Lane lane) {
        return lane.draw()
                .map(draw -> String.format(Locale.ROOT, "%.0f s", Math.floor(draw.seconds())))
                .orElse("");
    }

    private static Optional<Alert> lastSample(Freshness freshness, Sampler sampler) {
        return freshness.state().samples().stream()
                .filter(sample -> sample.sampler() == sampler)
                .reduce((earlier, later) -> later)
                .map(LanePresenter::sample);
    }

    private static Alert sample(Sample sample) {
        Attention attention =
                switch (sample.verdict().grade()) {
                    case ACCEPTED -> Attention.CALM;
                    case SUSPECT -> Attention.NOTICE;
                    case VOID -> Attention.ALARM;
                };
        String truth = sample.truth().isPresent()
                ? String.format(Locale.ROOT, ", true %.0f %s", sample.truth().getAsDouble(), sample.unit())
                : "";
        return new Alert(
                attention,
                "sample " + sample.number() + " " + sample.verdict().grade().word() + ": "
                        + sample.got().text(sample.unit()) + truth + "  ·  "
                        + String.join("; ", sample.verdict().reasons()));
    }

    private static LaneView.Caution caution(Sampler sampler) {
        return switch (sampler) {
            case WATER ->
                new LaneView.Caution("CAUTION", "a full jar is heavy and off centre: tell the pilot before lift-off");
            case AIR ->
                new LaneView.Caution("NOTICE", "own exhaust, propellers and vented gas spoil the sample: keep upwind");
            case SOIL ->
                new LaneView.Caution(
                        "WARNING", "compressed gas drives the probe: nobody within reach; local rules first");
        };
    }
}
