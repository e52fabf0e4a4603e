package ouzel.app.screen.model;

import java.util.List;
import ouzel.app.desk.ConditionRow;
import ouzel.app.desk.Lane;
import ouzel.app.desk.Phase;
import ouzel.protocol.message.Sampler;

/** What the operator may do with one sampler now, and what the screen says about it. */
final class ControlsPresenter {
    private ControlsPresenter() {}

    static LaneView.Controls view(Freshness freshness, Lane lane, Phase phase, List<ConditionRow> rows) {
        boolean fresh = freshness.isFresh();
        boolean waiting = lane.arm().filter(LanePresenter::isWaiting).isPresent()
                || lane.trigger().filter(LanePresenter::isWaiting).isPresent();
        boolean holds = !rows.isEmpty() && rows.stream().allMatch(LadderPresenter::holdsForBoth);
        boolean triggered = lane.trigger().filter(LanePresenter::isWaiting).isPresent();
        return new LaneView.Controls(
                fresh && phase == Phase.SAFE && holds && !waiting,
                fresh && phase == Phase.ARMED && !triggered,
                freshness.state().session().open() && LanePresenter.isStoppable(lane),
                fresh && isReloadable(phase),
                question(lane.sampler()),
                rest(phase, triggered),
                hint(fresh, lane, phase, rows));
    }

    private static boolean isReloadable(Phase phase) {
        return phase == Phase.DONE || phase == Phase.SPENT || phase == Phase.FAULT;
    }

    private static Alert hint(boolean fresh, Lane lane, Phase phase, List<ConditionRow> rows) {
        String key = String.valueOf(lane.sampler().ordinal() + 1);
        return switch (phase) {
            case UNKNOWN ->
                lane.isUnresolved()
                        ? new Alert(Attention.ALARM, "Do not repeat it: the payload is asked what became of it.")
                        : new Alert(Attention.NOTICE, "State not known: wait for the link.");
            case SAFE -> safeHint(fresh, lane, rows, key);
            case ARMED -> new Alert(Attention.NOTICE, armedHint(lane.sampler()));
            case DRAWING -> new Alert(Attention.ACTIVE, "Pump runs. Stop with X.");
            case STROKING -> new Alert(Attention.ACTIVE, "Valve open: the probe strokes and comes back by itself.");
            case DONE ->
                new Alert(Attention.CALM, "Done. Fit a fresh " + Words.container(lane.sampler()) + ", then Reload.");
            case SPENT ->
                new Alert(
                        Attention.NOTICE,
                        "Used without a whole sample: fit a fresh " + Words.container(lane.sampler())
                                + ", then Reload.");
            case FAULT -> new Alert(Attention.ALARM, faultHint(lane.sampler()));
        };
    }

    private static Alert safeHint(boolean fresh, Lane lane, List<ConditionRow> rows, String key) {
        long open =
                rows.stream().filter(row -> !LadderPresenter.holdsForBoth(row)).count();
        if (lane.arm().filter(LanePresenter::isWaiting).isPresent()) {
            return new Alert(Attention.ACTIVE, "Arming: waiting for the payload's answer.");
        }
        if (open > 0) {
            return new Alert(
                    Attention.CALM,
                    "Cannot arm: " + (open == 1 ? "1 condition" : open + " conditions") + " below not met.");
        }
        return fresh
                ? new Alert(Attention.CALM, "Ready: arm with " + key + ".")
                : new Alert(Attention.NOTICE, "Wait for the link.");
    }

    private static String armedHint(Sampler sampler) {
        return sampler == Sampler.SOIL
                ? "Armed. Look up: nobody near the probe? Then hold Space."
                : "Armed. Hold Space to start the pump.";
    }

    private static String faultHint(Sampler sampler) {
        return sampler == Sampler.SOIL
                ? "HOLD TAKE-OFF. Do not approach before gas is vented and the plug is out."
                : "Stopped by a fault on board: bring it home and look at it.";
    }

    private static String rest(Phase phase, boolean triggered) {
        if (triggered) {
            return "Triggered";
        }
        return switch (phase) {
            case SAFE, ARMED -> "Arm first";
            case DRAWING, STROKING -> "Running";
            case DONE, SPENT, FAULT -> "Reload first";
            case UNKNOWN -> "Trigger";
        };
    }

    private static String question(Sampler sampler) {
        return switch (sampler) {
            case WATER -> "Empty, clean jar fitted?";
            case AIR -> "Fresh, flat gas bag fitted?";
            case SOIL -> "Clean probe tip fitted, probe home?";
        };
    }
}
