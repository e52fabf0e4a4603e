package ouzel.app.desk;

import java.util.Optional;
import java.util.function.Function;
import ouzel.app.desk.Effect.Urgency;
import ouzel.app.desk.Note.Weight;
import ouzel.app.desk.OrderTrack.Stage;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.QueryOutcome;
import ouzel.protocol.message.Reload;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Stop;
import ouzel.protocol.message.Trigger;

/**
 * Follows every order from leaving to its end: repeats it while it may still act, calls it unknown when nothing is
 * heard, and then only asks. An order is never made twice: a repetition carries the same id.
 */
final class Orders {
    /** An arm or trigger may act this long after it left, ms. */
    static final long HAZARDOUS_LIFE_MILLIS = 2_000;
    /** Any other order, ms. */
    static final long LIFE_MILLIS = 10_000;
    /** An unanswered order is sent again after this time, ms. */
    static final long REPEAT_MILLIS = 400;
    /** Safe-all is repeated faster. */
    static final long SAFE_ALL_REPEAT_MILLIS = 200;
    /** No answer for this long: unknown. Longer than an arm or trigger may act, so no copy of it can still act then. */
    static final long UNKNOWN_AFTER_MILLIS = 2_500;
    /** A question about an order is asked this often, ms. */
    static final long QUERY_MILLIS = 1_000;

    private Orders() {}

    /** Issues an order of one lane and starts to follow it. */
    static OrderTrack issue(Turn turn, Order order) {
        long id = turn.nextOrderId();
        turn.send(id, order, lifeOf(order), urgencyOf(order));
        return OrderTrack.sent(id, order, turn.now);
    }

    private static long lifeOf(Order order) {
        return order.isHazardous() ? HAZARDOUS_LIFE_MILLIS : LIFE_MILLIS;
    }

    private static Urgency urgencyOf(Order order) {
        if (order instanceof SafeAll || order instanceof Stop) {
            return Urgency.AHEAD;
        }
        return order.isHazardous() ? Urgency.DURABLE_FIRST : Urgency.IN_TURN;
    }

    /** Time went on: repeats, gives up, asks. */
    static void tick(Turn turn) {
        for (Sampler sampler : Sampler.values()) {
            turn.lane(sampler).arm().ifPresent(track -> keep(turn, sampler, track, tickTrack(turn, sampler, track)));
            turn.lane(sampler)
                    .trigger()
                    .ifPresent(track -> keep(turn, sampler, track, tickTrack(turn, sampler, track)));
            turn.lane(sampler).other().ifPresent(track -> keep(turn, sampler, track, tickTrack(turn, sampler, track)));
        }
        turn.safeAll.ifPresent(track -> turn.safeAll = Optional.of(tickSafeAll(turn, track)));
    }

    private static OrderTrack tickTrack(Turn turn, Sampler sampler, OrderTrack track) {
        long sinceSent = turn.now.millisSince(track.lastSent());
        long age = turn.now.millisSince(track.steps().get(0).at());
        return switch (track.stage()) {
            case SENT -> {
                if (age >= UNKNOWN_AFTER_MILLIS) {
                    turn.note(
                            sampler,
                            Weight.PINNED,
                            name(track.order())
                                    + " was sent and nothing was heard: its outcome is UNKNOWN. Do not repeat it; the"
                                    + " desk asks the payload.");
                    yield track.at(Stage.UNKNOWN, "no answer for " + Words.age(age), turn.now);
                }
                boolean mayStillAct = age + REPEAT_MILLIS / 2 < lifeOf(track.order());
                if (sinceSent >= REPEAT_MILLIS && mayStillAct && turn.session.open()) {
                    turn.send(track.orderId(), track.order(), lifeOf(track.order()) - age, repeatUrgency(track));
                    yield track.sentAgain(turn.now);
                }
                yield track;
            }
            case UNKNOWN, ACCEPTED, STARTED, PROGRESS -> ask(turn, track, sinceSent);
            case COMPLETED, REFUSED, FAILED -> track;
        };
    }

    private static Urgency repeatUrgency(OrderTrack track) {
        return urgencyOf(track.order()) == Urgency.AHEAD ? Urgency.AHEAD : Urgency.IN_TURN;
    }

    /** Asks what became of an order that is open; an order under way is asked about only after three times as long. */
    private static OrderTrack ask(Turn turn, OrderTrack track, long sinceSent) {
        long wait = track.stage() == Stage.UNKNOWN ? QUERY_MILLIS : 3 * QUERY_MILLIS;
        if (sinceSent < wait || !turn.isLinkFresh()) {
            return track;
        }
        turn.send(0, new QueryOutcome(track.orderId()), LIFE_MILLIS, Urgency.IN_TURN);
        return track.askedAbout(turn.now);
    }

    private static OrderTrack tickSafeAll(Turn turn, OrderTrack track) {
        boolean due = turn.now.millisSince(track.lastSent()) >= SAFE_ALL_REPEAT_MILLIS;
        if (!track.isOpen() || !due || !turn.session.open()) {
            return track;
        }
        turn.send(track.orderId(), track.order(), LIFE_MILLIS, Urgency.AHEAD);
        return track.sentAgain(turn.now);
    }

    /** The payload said how far an order came. */
    static void heard(Turn turn, Outcome outcome) {
        if (turn.safeAll.filter(track -> track.orderId() == outcome.orderId()).isPresent()) {
            turn.safeAll = turn.safeAll.map(track -> advance(turn, Optional.empty(), track, outcome));
            return;
        }
        for (Lane lane : turn.lanes()) {
            Optional<OrderTrack> track = trackOf(lane, outcome.orderId());
            if (track.isPresent()) {
                OrderTrack next = advance(turn, Optional.of(lane.sampler()), track.get(), outcome);
                keep(turn, lane.sampler(), track.get(), next);
                if (next.order() instanceof Arm && outcome.stage() == Outcome.Stage.COMPLETED) {
                    armed(turn, lane.sampler(), outcome);
                }
                return;
            }
        }
    }

    /** An event said that the order of {@code orderId} came to {@code stage}. */
    static void advanceByEvent(Turn turn, Sampler sampler, long orderId, Stage stage, String why) {
        Optional<OrderTrack> track = trackOf(turn.lane(sampler), orderId);
        if (track.isPresent() && isAhead(track.get().stage(), stage)) {
            keep(turn, sampler, track.get(), move(turn, Optional.of(sampler), track.get(), stage, why));
        }
    }

    private static void armed(Turn turn, Sampler sampler, Outcome outcome) {
        Lane lane = turn.lane(sampler);
        boolean triggered = lane.trigger()
                .filter(track -> track.order() instanceof Trigger trigger && trigger.token() == outcome.token())
                .isPresent();
        if (triggered || lane.token() == outcome.token()) {
            return;
        }
        Moment until = new Moment(
                turn.now.nanos() + outcome.tokenLifeMillis() * 1_000_000L,
                turn.now.utcMillis() + outcome.tokenLifeMillis());
        turn.put(lane.withToken(outcome.token(), Optional.of(until)));
        turn.sound(Effect.Cue.ARMED);
    }

    private static OrderTrack advance(Turn turn, Optional<Sampler> sampler, OrderTrack track, Outcome outcome) {
        if (outcome.stage() == Outcome.Stage.NEVER_SEEN && track.stage() != Stage.UNKNOWN) {
            return track;
        }
        Stage next = Stage.of(outcome.stage());
        return isAhead(track.stage(), next) ? move(turn, sampler, track, next, Words.why(outcome)) : track;
    }

    private static boolean isAhead(Stage present, Stage next) {
        return present == Stage.UNKNOWN || (!present.isFinal() && next.compareTo(present) > 0);
    }

    private static OrderTrack move(Turn turn, Optional<Sampler> sampler, OrderTrack track, Stage next, String why) {
        String name = name(track.order());
        if (track.stage() == Stage.UNKNOWN) {
            turn.unpin(note -> note.sampler().equals(sampler));
            turn.note(
                    sampler,
                    Weight.ATTENTION,
                    name + " is resolved: " + next.word() + (why.isEmpty() ? "." : ": " + why + "."),
                    turn.now);
        } else if (next == Stage.REFUSED || next == Stage.FAILED) {
            turn.note(sampler, Weight.PINNED, name + " " + next.word() + ": " + why + ".", turn.now);
        } else if (next == Stage.COMPLETED && !(track.order() instanceof Trigger)) {
            turn.note(sampler, Weight.PLAIN, name + " completed.", turn.now);
        }
        return track.at(next, why, turn.now);
    }

    /** Every open order of every lane becomes unknown: the session that could tell is gone. */
    static void sessionLost(Turn turn) {
        for (Sampler sampler : Sampler.values()) {
            Lane lane = turn.lane(sampler).withToken(0, Optional.empty());
            turn.put(lane);
            Function<OrderTrack, OrderTrack> lose = track ->
                    track.isOpen() ? track.at(Stage.UNKNOWN, "the session ended before an answer", turn.now) : track;
            lane.arm().ifPresent(track -> keep(turn, sampler, track, lose.apply(track)));
            lane.trigger().ifPresent(track -> keep(turn, sampler, track, lose.apply(track)));
            lane.other().ifPresent(track -> keep(turn, sampler, track, lose.apply(track)));
        }
    }

    /** An order could not leave: nothing can have moved. */
    static void notSent(Turn turn, long orderId, String sentence) {
        for (Lane lane : turn.lanes()) {
            trackOf(lane, orderId)
                    .filter(track -> track.isOpen() && (track.order().isHazardous() || track.sends() == 1))
                    .ifPresent(track -> keep(
                            turn,
                            lane.sampler(),
                            track,
                            move(turn, Optional.of(lane.sampler()), track, Stage.REFUSED, "not sent: " + sentence)));
        }
    }

    private static Optional<OrderTrack> trackOf(Lane lane, long orderId) {
        return Optional.<OrderTrack>empty()
                .or(() -> lane.trigger().filter(track -> track.orderId() == orderId))
                .or(() -> lane.arm().filter(track -> track.orderId() == orderId))
                .or(() -> lane.other().filter(track -> track.orderId() == orderId));
    }

    private static void keep(Turn turn, Sampler sampler, OrderTrack old, OrderTrack next) {
        if (next == old) {
            return;
        }
        turn.change(sampler, lane -> {
            if (lane.trigger()
                    .filter(track -> track.orderId() == next.orderId())
                    .isPresent()) {
                return lane.withTrigger(next);
            }
            if (lane.arm().filter(track -> track.orderId() == next.orderId()).isPresent()) {
                return lane.withArm(next);
            }
            return lane.withOther(next);
        });
    }

    /** The order's name as a sentence starts. */
    static String name(Order order) {
        if (order instanceof Arm) {
            return "Arm";
        }
        if (order instanceof Trigger) {
            return "Trigger";
        }
        if (order instanceof Stop) {
            return "Stop";
        }
        if (order instanceof SafeAll) {
            return "Safe-all";
        }
        return order instanceof Reload ? "Reload" : order.getClass().getSimpleName();
    }
}
