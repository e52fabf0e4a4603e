package ouzel.simulator.controller;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;

/**
 * Events kept until the console has acknowledged them, oldest first; survives loss of power.
 *
 * <p>When {@link #CAPACITY} is reached, the {@value #DROPPED_AT_ONCE} oldest make room and one
 * {@link Event.Kind#EVENTS_DROPPED} says so with the number of events that were never acknowledged.
 */
public final class EventStore {
    /** Most events kept. */
    public static final int CAPACITY = 256;

    private static final int DROPPED_AT_ONCE = 16;

    private final ArrayDeque<Event> events = new ArrayDeque<>(CAPACITY);
    private long newest;

    EventStore() {}

    EventStore(EventStore other) {
        events.addAll(other.events);
        newest = other.newest;
    }

    /** Number of the newest event, 0 if there was none yet. */
    public long newest() {
        return newest;
    }

    /** Number of the oldest event still kept, 0 if all are acknowledged. */
    public long oldest() {
        return events.isEmpty() ? 0 : events.peekFirst().number();
    }

    /** The events kept, oldest first. */
    public List<Event> kept() {
        return List.copyOf(events);
    }

    /** Keeps {@code event} under the next number, whatever number it carries, and returns it so numbered. */
    Event add(Event event) {
        if (events.size() >= CAPACITY - 1) {
            makeRoom(event);
        }
        return append(event);
    }

    /** Forgets the events up to and including {@code upTo}; a number never given changes nothing. */
    void acknowledge(long upTo) {
        if (upTo > newest) {
            return;
        }
        while (!events.isEmpty() && events.peekFirst().number() <= upTo) {
            events.removeFirst();
        }
    }

    /** The oldest event kept whose number is at least {@code from}. */
    Optional<Event> firstFrom(long from) {
        Iterator<Event> iterator = events.iterator();
        while (iterator.hasNext()) {
            Event event = iterator.next();
            if (event.number() >= from) {
                return Optional.of(event);
            }
        }
        return Optional.empty();
    }

    private void makeRoom(Event cause) {
        int dropped = 0;
        List<Event> gone = new ArrayList<>();
        for (int i = 0; i < DROPPED_AT_ONCE; i++) {
            gone.add(events.removeFirst());
        }
        for (Event event : gone) {
            dropped += event.kind() == Event.Kind.EVENTS_DROPPED ? event.value() : 1;
        }
        append(new Event(
                0,
                cause.bootCount(),
                cause.timeMillis(),
                Event.Kind.EVENTS_DROPPED,
                Sampler.WATER,
                0,
                Reason.NONE,
                dropped));
    }

    private Event append(Event event) {
        newest++;
        Event numbered = new Event(
                newest,
                event.bootCount(),
                event.timeMillis(),
                event.kind(),
                event.sampler(),
                event.orderId(),
                event.reason(),
                event.value());
        events.addLast(numbered);
        return numbered;
    }
}
