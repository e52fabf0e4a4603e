package ouzel.app.screen.model;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ouzel.app.desk.Lane;
import ouzel.app.desk.OrderTrack;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Reload;
import ouzel.protocol.message.Stop;
import ouzel.protocol.message.Trigger;

/** How far an order came, as a ladder of words with times. */
final class OrderPresenter {
    private static final List<OrderTrack.Stage> MOVING = List.of(
            OrderTrack.Stage.SENT,
            OrderTrack.Stage.ACCEPTED,
            OrderTrack.Stage.STARTED,
            OrderTrack.Stage.PROGRESS,
            OrderTrack.Stage.COMPLETED);
    private static final List<OrderTrack.Stage> PLAIN =
            List.of(OrderTrack.Stage.SENT, OrderTrack.Stage.ACCEPTED, OrderTrack.Stage.COMPLETED);

    private OrderPresenter() {}

    /** The lane's order that matters most: one whose outcome is unknown, or else the newest. */
    static Optional<OrderLine> view(Lane lane, ZoneId zone) {
        Comparator<OrderTrack> byWeight = Comparator.<OrderTrack, Boolean>comparing(
                        track -> track.stage() == OrderTrack.Stage.UNKNOWN)
                .thenComparing(track -> track.steps().get(0).at().nanos());
        return Stream.of(lane.arm(), lane.trigger(), lane.other())
                .flatMap(Optional::stream)
                .max(byWeight)
                .map(track -> line(track, zone));
    }

    static OrderLine line(OrderTrack track, ZoneId zone) {
        List<OrderLine.Stage> stages = new ArrayList<>();
        List<OrderTrack.Stage> expected = track.order() instanceof Trigger ? MOVING : PLAIN;
        boolean ended = isBad(track.stage()) || track.stage() == OrderTrack.Stage.COMPLETED;
        for (OrderTrack.Step step : track.steps()) {
            stages.add(reached(track, step, zone));
        }
        if (!ended) {
            int next = expected.indexOf(track.stage()) + 1;
            expected.subList(next, expected.size())
                    .forEach(stage -> stages.add(new OrderLine.Stage(stage.word(), "", OrderLine.Reach.AHEAD)));
        }
        return new OrderLine(name(track), stages, track.words(), attention(track));
    }

    private static OrderLine.Stage reached(OrderTrack track, OrderTrack.Step step, ZoneId zone) {
        OrderTrack.Step first = track.steps().get(0);
        String time = step == first
                ? Words.clock(step.at(), zone)
                : Words.after(step.at().secondsSince(first.at()));
        return new OrderLine.Stage(
                step.stage().word(), time, isBad(step.stage()) ? OrderLine.Reach.BAD : OrderLine.Reach.REACHED);
    }

    private static boolean isBad(OrderTrack.Stage stage) {
        return switch (stage) {
            case SENT, ACCEPTED, STARTED, PROGRESS, COMPLETED -> false;
            case REFUSED, FAILED, UNKNOWN -> true;
        };
    }

    private static Attention attention(OrderTrack track) {
        return switch (track.stage()) {
            case SENT, ACCEPTED, STARTED, PROGRESS -> Attention.ACTIVE;
            case COMPLETED -> Attention.CALM;
            case REFUSED -> Attention.NOTICE;
            case FAILED, UNKNOWN -> Attention.ALARM;
        };
    }

    private static String name(OrderTrack track) {
        boolean unheard = track.stage() == OrderTrack.Stage.SENT || track.stage() == OrderTrack.Stage.UNKNOWN;
        return unheard && track.sends() > 1 ? name(track.order()) + " ×" + track.sends() : name(track.order());
    }

    private static String name(Order order) {
        if (order instanceof Arm) {
            return "arm";
        }
        if (order instanceof Trigger) {
            return "trigger";
        }
        if (order instanceof Stop) {
            return "stop";
        }
        return order instanceof Reload ? "reload" : "order";
    }
}
