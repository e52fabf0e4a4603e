package ouzel.simulator.controller;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Outcome.Stage;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;

/** The two stores that survive loss of power. */
class StoresTest {

    @Test
    void numbersEventsFromOneAndForgetsTheAcknowledged() {
        EventStore store = filled(5);

        store.acknowledge(3);

        assertThat(store.kept()).extracting(Event::number).containsExactly(4L, 5L);
        assertThat(store.oldest()).isEqualTo(4);
        assertThat(store.newest()).isEqualTo(5);
    }

    @Test
    void anAcknowledgementOfEventsThatNeverWereChangesNothing() {
        EventStore store = filled(5);

        store.acknowledge(6);

        assertThat(store.kept()).hasSize(5);
    }

    @Test
    void saysHowManyEventsWereDroppedWhenItWasFull() {
        EventStore store = filled(EventStore.CAPACITY);

        List<Event> dropped = store.kept().stream()
                .filter(event -> event.kind() == Event.Kind.EVENTS_DROPPED)
                .toList();

        assertThat(dropped).extracting(Event::value).containsExactly(16);
        assertThat(store.oldest()).isEqualTo(17);
    }

    @Property(tries = 50)
    void losesNoEventWithoutSayingSo(@ForAll @IntRange(min = 1, max = 5_000) int events) {
        EventStore store = filled(events);

        int said = store.kept().stream()
                .filter(event -> event.kind() == Event.Kind.EVENTS_DROPPED)
                .mapToInt(Event::value)
                .sum();
        long kept = store.kept().stream()
                .filter(event -> event.kind() != Event.Kind.EVENTS_DROPPED)
                .count();

        assertThat(kept + said).isEqualTo(events);
        assertThat(store.kept()).hasSizeLessThanOrEqualTo(EventStore.CAPACITY);
    }

    @Test
    void remembersTheLastThirtyTwoOrders() {
        OutcomeStore store = new OutcomeStore();
        for (long order = 1; order <= 40; order++) {
            store.put(Outcome.of(order, Stage.COMPLETED));
        }

        assertThat(store.of(8)).isEmpty();
        assertThat(store.of(9)).isPresent();
        assertThat(store.kept()).hasSize(OutcomeStore.CAPACITY);
    }

    @Test
    void neverForgetsAnOrderThatIsStillUnderWay() {
        OutcomeStore store = new OutcomeStore();
        store.put(Outcome.of(1, Stage.PROGRESS));
        for (long order = 2; order <= 100; order++) {
            store.put(Outcome.of(order, Stage.REFUSED));
        }

        assertThat(store.of(1)).isPresent();
    }

    @Test
    void doesNotRememberOrderZero() {
        OutcomeStore store = new OutcomeStore();

        store.put(Outcome.of(0, Stage.COMPLETED));

        assertThat(store.kept()).isEmpty();
    }

    @Test
    void aCopyOfTheMemoryStandsApart() {
        NonVolatile memory = new NonVolatile(Limits.factorySettings());
        NonVolatile copy = memory.copy();

        memory.countStroke();
        memory.countBoot();
        memory.beginActing(Sampler.WATER, 1);
        memory.outcomes().put(Outcome.of(1, Stage.STARTED));

        assertThat(copy.strokesUsed()).isZero();
        assertThat(copy.bootCount()).isZero();
        assertThat(copy.acting()).isEmpty();
        assertThat(copy.outcomes().kept()).isEmpty();
    }

    private static EventStore filled(int events) {
        EventStore store = new EventStore();
        for (int i = 0; i < events; i++) {
            store.add(new Event(0, 1, i, Event.Kind.ARMED, Sampler.AIR, 0, Reason.NONE, 0));
        }
        return store;
    }
}
