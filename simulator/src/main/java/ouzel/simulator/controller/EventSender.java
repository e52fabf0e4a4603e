package ouzel.simulator.controller;

import java.util.Optional;
import ouzel.protocol.message.Event;

/**
 * Says unacknowledged events again, oldest first: a round starts every {@value #ROUND_MILLIS} ms and says one event
 * each {@value #PACE_MILLIS} ms, so that a long store cannot crowd the link.
 */
final class EventSender {
    private static final int ROUND_MILLIS = 1_000;
    private static final int PACE_MILLIS = 50;
    private static final long NO_ROUND = -1;

    private final EventStore store;
    private final Outbox outbox;
    private long nextInRound = NO_ROUND;
    private long nextRoundAtMillis = ROUND_MILLIS;
    private long nextEventAtMillis;

    EventSender(EventStore store, Outbox outbox) {
        this.store = store;
        this.outbox = outbox;
    }

    /** Starts a round at event {@code from} now. */
    void fetch(long from, long nowMillis) {
        nextInRound = from;
        nextRoundAtMillis = nowMillis + ROUND_MILLIS;
    }

    void step(long nowMillis) {
        if (nextInRound == NO_ROUND && nowMillis >= nextRoundAtMillis) {
            fetch(0, nowMillis);
        }
        if (nextInRound != NO_ROUND && nowMillis >= nextEventAtMillis) {
            Optional<Event> event = store.firstFrom(nextInRound);
            event.ifPresent(outbox::add);
            nextInRound = event.map(said -> said.number() + 1).orElse(NO_ROUND);
            nextEventAtMillis = nowMillis + PACE_MILLIS;
        }
    }
}
