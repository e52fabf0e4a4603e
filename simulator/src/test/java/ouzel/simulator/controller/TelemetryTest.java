package ouzel.simulator.controller;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.message.AcknowledgeEvents;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.ChangeSettings;
import ouzel.protocol.message.CurrentTrace;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.FetchEvents;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Outcome.Stage;
import ouzel.protocol.message.QueryOutcome;
import ouzel.protocol.message.ReadSettings;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Settings;
import ouzel.protocol.message.Status;
import ouzel.protocol.message.ValveWaveform;

/** What the payload says by itself and in answer, and how often. */
class TelemetryTest {

    @Test
    void saysItsStatusTenTimesASecondAndWhoItIsEveryTwoSeconds() {
        Bench bench = Bench.readyFor(Sampler.AIR);
        bench.said.clear();

        bench.run(10_000);

        assertThat(bench.said(Status.class)).hasSize(100);
        assertThat(bench.said(Identity.class)).hasSize(5);
    }

    @Test
    void introducesItselfWhenASessionOpens() {
        Bench bench = Bench.readyFor(Sampler.AIR);

        bench.controller.sessionOpened(5, bench.now);

        assertThat(bench.controller.drain()).anyMatch(Identity.class::isInstance);
        assertThat(bench.status().session()).isEqualTo(5);
    }

    @Test
    void tracesThePumpsCurrentWithoutAGapUntilHalfASecondAfter() {
        Bench bench = Bench.acting(Sampler.WATER);
        bench.run(30_000);

        List<CurrentTrace> traces = bench.said(CurrentTrace.class);
        int samples =
                traces.stream().mapToInt(trace -> trace.milliamps().size()).sum();

        assertThat(traces).extracting(CurrentTrace::sampler).containsOnly(Sampler.WATER);
        for (int i = 0; i < traces.size(); i++) {
            assertThat(traces.get(i).firstSample()).isEqualTo(10L * i);
        }
        assertThat(samples).isBetween(2_450 + 49, 2_450 + 51);
    }

    @Test
    void sendsTheFirstHundredMillisecondsOfTheValveInTwoPieces() {
        Bench bench = Bench.acting(Sampler.SOIL);
        bench.run(300);

        List<ValveWaveform> pieces = bench.said(ValveWaveform.class);

        assertThat(pieces).extracting(ValveWaveform::firstSample).containsExactly(0, 100);
        assertThat(pieces).extracting(ValveWaveform::total).containsOnly(200);
        assertThat(pieces).allMatch(piece -> piece.milliamps().size() == 100);
    }

    @Test
    void sendsTheWaveformTwiceMoreSinceNobodyAcknowledgesIt() {
        Bench bench = Bench.acting(Sampler.SOIL);
        bench.run(3_000);

        List<ValveWaveform> pieces = bench.said(ValveWaveform.class);

        assertThat(pieces).hasSize(6);
        assertThat(pieces.subList(2, 4)).isEqualTo(pieces.subList(0, 2));
        assertThat(pieces.subList(4, 6)).isEqualTo(pieces.subList(0, 2));
    }

    @Test
    void sendsWhatThereIsOfAShortOpening() {
        Bench bench = Bench.readyFor(Sampler.SOIL);
        long arm = bench.send(new Arm(Sampler.SOIL, 60, 0));
        bench.trigger(Sampler.SOIL, bench.outcome(arm).token());

        bench.run(500);

        assertThat(bench.said(ValveWaveform.class))
                .extracting(ValveWaveform::total)
                .containsOnly(120);
    }

    @Test
    void capturesNothingWithoutTheCapability() {
        Bench bench = new Bench(Capability.all() & ~Capability.VALVE_WAVEFORM.bit());
        bench.world.onGround();
        bench.settle();
        bench.trigger(Sampler.SOIL, bench.arm(Sampler.SOIL));

        bench.run(500);

        assertThat(bench.said(ValveWaveform.class)).isEmpty();
    }

    @Test
    void saysEventsAgainEverySecondUntilTheyAreAcknowledged() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.arm(Sampler.WATER);
        bench.said.clear();
        bench.run(5_000);
        long armed = bench.events(Event.Kind.ARMED).get(0).number();
        long said = countOf(armed, bench.said);
        bench.send(new AcknowledgeEvents(armed));
        bench.said.clear();
        bench.run(2_000);

        assertThat(said).isBetween(4L, 5L);
        assertThat(countOf(armed, bench.said)).isZero();
    }

    @Test
    void repeatsNoMoreThanTwentyEventsASecond() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        for (int i = 0; i < 100; i++) {
            bench.send(new ChangeSettings(Limits.factorySettings()));
        }
        bench.said.clear();

        bench.run(5_000);

        assertThat(bench.said(Event.class)).hasSizeBetween(90, 101);
    }

    @Test
    void fetchesEventsFromTheAskedNumberOn() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.arm(Sampler.WATER);
        bench.run(100);
        bench.said.clear();

        bench.send(new FetchEvents(2));
        bench.run(200);

        assertThat(bench.said(Event.class)).extracting(Event::number).startsWith(2L, 3L);
    }

    @Test
    void readsSettingsBackAfterEveryChange() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        Settings changed = new Settings(250, 600, 200, 50_000, 50_000, 10, 800, 2_000, 5_000, false, true);

        bench.send(new ChangeSettings(changed));
        bench.send(new ReadSettings());
        bench.run(2_000);

        assertThat(bench.said(Settings.class)).containsExactly(changed, changed);
        assertThat(bench.said(Identity.class))
                .last()
                .extracting(Identity::settingsCheck)
                .isEqualTo(MessageCodec.settingsCheck(changed));
    }

    @Test
    void answersAQuestionAboutAnOrderItNeverSaw() {
        Bench bench = Bench.readyFor(Sampler.WATER);

        bench.send(0, new QueryOutcome(4_711));

        assertThat(bench.lastOutcome()).isEqualTo(Outcome.of(4_711, Stage.NEVER_SEEN));
    }

    @Test
    void aSensorThatIsNotFittedReadsAbsent() {
        Bench bench = new Bench(Capability.all() & ~Capability.TILT.bit() & ~Capability.BAG_PRESSURE.bit());
        bench.settle();

        Readings readings = bench.status().readings();

        assertThat(readings.tiltTenths()).isEqualTo(Readings.ABSENT);
        assertThat(readings.bagPascals()).isEqualTo(Readings.ABSENT);
        assertThat(readings.batteryMillivolts()).isEqualTo(12_000);
    }

    @Test
    void theStatusCountsDownTheTokenAndTheRun() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        long token = bench.arm(Sampler.WATER);
        int life = bench.status().armLifeMillis();
        bench.trigger(Sampler.WATER, token);

        Status running = bench.status();

        assertThat(life).isBetween(9_900, 10_000);
        assertThat(running.armLifeMillis()).isZero();
        assertThat(running.runMillis()).isBetween(10, 100);
    }

    @Test
    void sendsOutcomesBeforeEverythingElse() {
        Outbox outbox = new Outbox();
        Bench bench = Bench.acting(Sampler.WATER);
        bench.run(1_000);
        bench.said(Status.class).forEach(outbox::add);
        bench.said(CurrentTrace.class).forEach(outbox::add);
        bench.said(Event.class).forEach(outbox::add);
        bench.said(Outcome.class).forEach(outbox::add);

        assertThat(outbox.poll()).containsInstanceOf(Outcome.class);
        assertThat(outbox.drain().stream().filter(Status.class::isInstance)).hasSize(1);
        assertThat(outbox.poll()).isEmpty();
    }

    @Test
    void aQueueThatNobodyEmptiesStaysBoundedAndCounts() {
        Outbox outbox = new Outbox();

        for (int i = 0; i < Outbox.CAPACITY + 10; i++) {
            outbox.add(Outcome.of(i, Stage.COMPLETED));
        }

        assertThat(outbox.drain()).hasSize(Outbox.CAPACITY);
        assertThat(outbox.dropped()).isEqualTo(10);
    }

    private static long countOf(long number, List<Downlink> said) {
        return said.stream()
                .filter(message -> message instanceof Event event && event.number() == number)
                .count();
    }
}
