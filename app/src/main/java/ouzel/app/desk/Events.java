package ouzel.app.desk;

import java.util.List;
import java.util.Optional;
import ouzel.app.desk.Draw.Mark;
import ouzel.app.desk.Effect.Urgency;
import ouzel.app.desk.Note.Weight;
import ouzel.app.desk.OrderTrack.Stage;
import ouzel.app.estimate.DrawEstimate;
import ouzel.app.estimate.Series;
import ouzel.protocol.message.AcknowledgeEvents;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.FetchEvents;
import ouzel.protocol.message.Status;

/**
 * The payload's numbered events: taken in order without a gap, and acknowledged only once they are in the journal, so
 * that a link gap hides nothing.
 */
final class Events {
    /** Acknowledging and fetching happen at most this often, ms. */
    static final long HOUSEKEEPING_MILLIS = 500;
    /** A status that an event has overtaken on the way comes at most this much later, ms. */
    private static final long OVERTAKEN_MILLIS = 10_000;

    private Events() {}

    static void heard(Turn turn, Event event) {
        long newest = turn.ledger.newestEvent();
        if (newest == 0) {
            newest = beforeFirst(turn);
        }
        if (event.number() != newest + 1) {
            return;
        }
        turn.newestEvent(event.number());
        Moment at = turn.atPayload(event.timeMillis());
        boolean recovered = turn.now.millisSince(at) > DeskState.STALE_AFTER_MILLIS;
        note(turn, event, recovered ? at : turn.now, recovered);
        if (event.kind().isOfSampler()) {
            ofSampler(turn, event, at);
        }
    }

    /** The event before the first that this desk owes its record: the oldest one that is still on board. */
    private static long beforeFirst(Turn turn) {
        return turn.status
                .map(heard -> heard.status().oldestEvent() > 0
                        ? heard.status().oldestEvent() - 1
                        : heard.status().newestEvent())
                .orElse(0L);
    }

    private static void note(Turn turn, Event event, Moment at, boolean recovered) {
        boolean grave =
                switch (event.kind()) {
                    case FAULT, STROKE_FAILED, DRAW_ENDED_EARLY, KEEP_ALIVE_LOST, EVENTS_DROPPED -> true;
                    case BOOTED,
                            SESSION_OPENED,
                            ARMED,
                            DISARMED,
                            DRAW_STARTED,
                            DRAW_COMPLETED,
                            STROKE_STARTED,
                            STROKE_COMPLETED,
                            SAFED,
                            RELOADED,
                            SETTINGS_CHANGED -> false;
                };
        turn.note(
                event.kind().isOfSampler() ? Optional.of(event.sampler()) : Optional.empty(),
                grave ? Weight.ATTENTION : Weight.PLAIN,
                Words.of(event) + (recovered ? " (recovered after a link gap)" : ""),
                at);
    }

    private static void ofSampler(Turn turn, Event event, Moment at) {
        String why = Words.brief(event.reason());
        switch (event.kind()) {
            case DRAW_STARTED -> {
                turn.put(turn.lane(event.sampler()).withDraw(startedDraw(turn, event, at)));
                Orders.advanceByEvent(turn, event.sampler(), event.orderId(), Stage.STARTED, "");
                turn.sound(Effect.Cue.STARTED);
            }
            case STROKE_STARTED -> {
                turn.put(turn.lane(event.sampler()).withStroke(Stroke.unseen(event.orderId(), at)));
                Orders.advanceByEvent(turn, event.sampler(), event.orderId(), Stage.STARTED, "");
                turn.sound(Effect.Cue.STARTED);
            }
            case DRAW_COMPLETED, DRAW_ENDED_EARLY -> {
                boolean whole = event.kind() == Event.Kind.DRAW_COMPLETED;
                turn.lane(event.sampler())
                        .draw()
                        .filter(draw -> draw.orderId() == event.orderId())
                        .ifPresent(draw -> turn.put(turn.lane(event.sampler())
                                .withDraw(draw.endedAt(at).marked(at.secondsSince(draw.started()), "end"))));
                Stage stage = whole ? Stage.COMPLETED : Stage.FAILED;
                Orders.advanceByEvent(turn, event.sampler(), event.orderId(), stage, whole ? "" : why);
                Sampling.drawEnded(turn, event, at);
            }
            case STROKE_COMPLETED, STROKE_FAILED -> {
                boolean whole = event.kind() == Event.Kind.STROKE_COMPLETED;
                Stage stage = whole ? Stage.COMPLETED : Stage.FAILED;
                Orders.advanceByEvent(turn, event.sampler(), event.orderId(), stage, whole ? "" : why);
                Sampling.strokeEnded(turn, event, at);
            }
            case DISARMED -> turn.change(event.sampler(), lane -> lane.withToken(0, Optional.empty()));
            case RELOADED -> Orders.advanceByEvent(turn, event.sampler(), event.orderId(), Stage.COMPLETED, "");
            case ARMED, FAULT -> {
                // Said in the note; the status carries the state itself.
            }
            case BOOTED, SESSION_OPENED, SAFED, SETTINGS_CHANGED, KEEP_ALIVE_LOST, EVENTS_DROPPED -> {
                // Not of a sampler.
            }
        }
    }

    private static Draw startedDraw(Turn turn, Event event, Moment at) {
        Lane lane = turn.lane(event.sampler());
        List<Mark> marks = lane.arm()
                .map(track ->
                        List.of(new Mark(track.steps().get(0).at().secondsSince(at), "arm"), new Mark(0, "start")))
                .orElse(List.of(new Mark(0, "start")));
        return new Draw(
                event.orderId(),
                at,
                Optional.empty(),
                Series.empty(),
                0,
                Series.empty(),
                Series.empty(),
                DrawEstimate.START,
                marks);
    }

    /** Keeps numbers in step with what the payload says it holds. */
    static void status(Turn turn, Status status) {
        long newest = turn.ledger.newestEvent();
        boolean isOlderThanTheEvent = turn.now.millisSince(turn.ledger.newestEventAt()) < OVERTAKEN_MILLIS;
        // Outside its session a status may be any age: a laptop that stood still hears old ones long after.
        boolean isOfSession = turn.session.open() && status.session() == turn.session.number();
        if (status.newestEvent() < newest && isOfSession && !isOlderThanTheEvent) {
            turn.note(
                    Weight.ATTENTION,
                    "The payload's event numbers went back from " + newest + " to " + status.newestEvent()
                            + ": its memory is new.");
            turn.newestEvent(0);
        } else if (status.oldestEvent() > newest + 1 && newest > 0) {
            turn.note(
                    Weight.ATTENTION,
                    "Events " + (newest + 1) + " to " + (status.oldestEvent() - 1)
                            + " are not on board any more: another console may hold them.");
            turn.newestEvent(status.oldestEvent() - 1);
        }
    }

    /** Fetches what is missing and acknowledges what is recorded. */
    static void tick(Turn turn) {
        boolean due = turn.now.millisSince(turn.ledger.eventsAskedAt()) >= HOUSEKEEPING_MILLIS;
        if (!due || !turn.isLinkFresh()) {
            return;
        }
        Status status = turn.status.orElseThrow().status();
        long newest = turn.ledger.newestEvent();
        if (status.newestEvent() > newest && status.oldestEvent() > 0) {
            long from = newest == 0 ? status.oldestEvent() : newest + 1;
            turn.send(0, new FetchEvents(from), Orders.LIFE_MILLIS, Urgency.IN_TURN);
            turn.eventsAsked(turn.ledger.acknowledgedEvent());
        } else if (status.oldestEvent() > 0 && status.oldestEvent() <= newest) {
            turn.send(0, new AcknowledgeEvents(newest), Orders.LIFE_MILLIS, Urgency.DURABLE_FIRST);
            turn.eventsAsked(newest);
        }
    }
}
