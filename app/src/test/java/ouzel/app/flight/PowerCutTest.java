package ouzel.app.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ouzel.app.desk.Lane;
import ouzel.app.desk.OrderTrack;
import ouzel.app.desk.Stimulus;
import ouzel.app.journal.MemoryJournal;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Sampler;
import ouzel.simulator.controller.BootCause;
import ouzel.simulator.plant.Outputs;
import ouzel.simulator.profile.ProfileFile;
import ouzel.simulator.radio.Weather;
import ouzel.simulator.rehearsal.Site;

/** The payload loses its power at a random instant of a sortie, fifty times, and the console gets to know all of it. */
final class PowerCutTest {
    private static final int CUTS = 50;
    /** From the first words to some way into the draw or past the stroke, ms. */
    private static final long LATEST_CUT_MILLIS = 60_000;

    /** Longer than a trigger's way there and back, ms. */
    private static final long AROUND_THE_TRIGGER_MILLIS = 400;

    private static final long LONGEST_DARKNESS_MILLIS = 3_000;
    private static final long TIME_TO_RESOLVE_MILLIS = 8_000;

    private final MemoryJournal journal = new MemoryJournal();

    static LongStream seeds() {
        return LongStream.rangeClosed(1, CUTS);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aPowerCutLeavesEverythingOffKeepsEveryEventAndIsResolvedAtTheDesk(long seed) {
        Cut cut = new Cut(seed);
        cut.flyToTheCut();
        List<Sampler> usedBefore = cut.used();
        Optional<OrderTrack> triggerBefore = cut.trigger();

        cut.darkness();
        cut.flight.payload().restart(BootCause.BROWN_OUT);
        assertThat(cut.flight.payload().outputs()).isEqualTo(Outputs.OFF);
        cut.flight.runTo(cut.flight.nowMillis() + TIME_TO_RESOLVE_MILLIS);

        assertThat(cut.used()).containsAll(usedBefore);
        assertThat(cut.flight.state().lanes()).noneMatch(Lane::isUnresolved);
        assertThat(cut.flight.payload().outputs()).isEqualTo(Outputs.OFF);
        triggerBefore.ifPresent(before -> assertResolved(before, cut.trigger().orElseThrow()));
        assertThat(bootsHeard()).isEqualTo(2);
        assertEveryEventIsInTheJournalOnceAndInOrder();
        assertNothingStartedTwice();
    }

    /** Without this the cuts might all have hit a payload at rest. */
    @Test
    void theCutsHitSamplersThatAreArmedThatActAndThatAreDone() {
        List<Optional<OrderTrack.Stage>> stages = seeds().mapToObj(Cut::new)
                .peek(Cut::flyToTheCut)
                .map(cut -> cut.trigger().map(OrderTrack::stage))
                .toList();

        assertThat(stages)
                .contains(
                        Optional.empty(),
                        Optional.of(OrderTrack.Stage.SENT),
                        Optional.of(OrderTrack.Stage.PROGRESS),
                        Optional.of(OrderTrack.Stage.COMPLETED));
    }

    private static void assertResolved(OrderTrack before, OrderTrack after) {
        boolean hadEnded = before.stage().isFinal();
        assertThat(after.orderId()).isEqualTo(before.orderId());
        assertThat(after.stage().isFinal()).as("%s became %s", before, after).isTrue();
        if (hadEnded) {
            assertThat(after.stage()).isEqualTo(before.stage());
        }
    }

    private Stream<Event> events() {
        return journal.entries().stream()
                .map(entry -> entry.stimulus() instanceof Stimulus.Heard heard ? heard.message() : null)
                .filter(Event.class::isInstance)
                .map(Event.class::cast)
                .distinct();
    }

    private long bootsHeard() {
        return events().filter(event -> event.kind() == Event.Kind.BOOTED).count();
    }

    private void assertEveryEventIsInTheJournalOnceAndInOrder() {
        List<Long> numbers = events().map(Event::number).sorted().toList();
        assertThat(numbers)
                .isEqualTo(LongStream.rangeClosed(1, numbers.get(numbers.size() - 1))
                        .boxed()
                        .toList());
    }

    private void assertNothingStartedTwice() {
        List<Long> starts = events().filter(
                        event -> event.kind() == Event.Kind.DRAW_STARTED || event.kind() == Event.Kind.STROKE_STARTED)
                .map(Event::orderId)
                .toList();
        assertThat(starts).doesNotHaveDuplicates().hasSizeLessThanOrEqualTo(1);
    }

    /** One sortie for one sampler, up to its cut. */
    private final class Cut {
        private final SplittableRandom chance;
        private final Sampler sampler;
        private final long atMillis;
        /** True for every second seed: the cut then comes between the trigger's leaving and the answer to it. */
        private final boolean atTheTrigger;

        private final long afterTriggerMillis;
        private final VirtualFlight flight;

        private Cut(long seed) {
            chance = new SplittableRandom(seed);
            sampler = Sampler.values()[chance.nextInt(Sampler.values().length)];
            atMillis = chance.nextLong(1_000, LATEST_CUT_MILLIS);
            atTheTrigger = seed % 2 == 0;
            afterTriggerMillis = chance.nextLong(0, AROUND_THE_TRIGGER_MILLIS);
            flight = new VirtualFlight(
                    new VirtualFlight.World(ProfileFile.reference(), Site.QUARRY, Weather.LIGHT_LOSS, seed), journal);
        }

        private void flyToTheCut() {
            ScriptedOperator operator = new ScriptedOperator(flight, List.of(sampler));
            while (!isTimeToCut()) {
                flight.step();
                if (flight.nowMillis() % 100 == 0) {
                    operator.look(flight.state(), flight.nowMillis());
                }
            }
        }

        private boolean isTimeToCut() {
            if (!atTheTrigger) {
                return flight.nowMillis() >= atMillis;
            }
            return trigger()
                            .map(track -> track.steps().get(0).at())
                            .filter(sent -> flight.now().millisSince(sent) >= afterTriggerMillis)
                            .isPresent()
                    || flight.nowMillis() >= 2 * LATEST_CUT_MILLIS;
        }

        private void darkness() {
            flight.payload().cutPower();
            long until = flight.nowMillis() + chance.nextLong(10, LONGEST_DARKNESS_MILLIS);
            while (flight.nowMillis() < until) {
                assertThat(flight.payload().outputs()).isEqualTo(Outputs.OFF);
                flight.step();
            }
        }

        private List<Sampler> used() {
            return Stream.of(Sampler.values()).filter(flight.payload()::isUsed).toList();
        }

        private Optional<OrderTrack> trigger() {
            return flight.state().lane(sampler).trigger();
        }
    }
}
