package ouzel.simulator.controller;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Outcome.Stage;
import ouzel.protocol.message.QueryOutcome;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Trigger;
import ouzel.simulator.plant.Outputs;

/** The power cut at every step of a sortie, and what the next start makes of it. */
class PowerCutTest {
    private static final long TRIGGER = 77;

    @ParameterizedTest
    @EnumSource(Sampler.class)
    void atEveryStepOfASortieTheNextStartHasOutputsOffAndNothingArmed(Sampler sampler) {
        for (NonVolatile cut : cutAtEveryStep(sampler)) {
            Bench restarted = new Bench(Capability.all(), cut);

            assertThat(restarted.controller.outputs()).isEqualTo(Outputs.OFF);
            assertThat(cut.acting()).isEmpty();
            assertThat(restarted.status().states())
                    .allMatch(state -> state == SamplerState.SAFE || state.isUsed(), "safe or used");
        }
    }

    @ParameterizedTest
    @EnumSource(Sampler.class)
    void atEveryStepAfterTheTriggerTheSamplerStaysUsedAndTheOutcomeIsStored(Sampler sampler) {
        List<NonVolatile> cuts = cutAtEveryStep(sampler);
        List<NonVolatile> triggered = cuts.stream()
                .filter(cut -> cut.outcomes().of(TRIGGER).isPresent())
                .toList();

        triggered.forEach(cut -> new Bench(Capability.all(), cut));

        assertThat(triggered).hasSizeGreaterThan(30);
        assertThat(triggered).allMatch(cut -> cut.use(sampler).isUsed(), "stays used");
        assertThat(triggered).allMatch(PowerCutTest::isSettled, "has a final outcome, or a restart as the reason");
    }

    @Test
    void aDrawCutShortIsRecordedAsRestartedWithWhatWasLastMetered() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.send(TRIGGER, new Trigger(Sampler.WATER, bench.arm(Sampler.WATER)));
        bench.run(10_000);

        bench.restart(BootCause.BROWN_OUT);

        assertThat(bench.memory.outcomes().of(TRIGGER))
                .contains(Outcome.because(TRIGGER, Stage.FAILED, Reason.RESTARTED, 79, 200));
        assertThat(bench.kinds()).endsWith(Event.Kind.BOOTED, Event.Kind.DRAW_ENDED_EARLY);
    }

    @Test
    void aRepeatOfATriggerAfterTheRestartGetsItsStoredOutcome() {
        Bench bench = Bench.readyFor(Sampler.SOIL);
        Trigger trigger = new Trigger(Sampler.SOIL, bench.arm(Sampler.SOIL));
        bench.send(TRIGGER, trigger);
        bench.run(50);
        bench.restart(BootCause.WATCHDOG).settle();

        bench.send(TRIGGER, trigger);

        assertThat(bench.lastOutcome().reason()).isEqualTo(Reason.RESTARTED);
        assertThat(bench.outputs).isEqualTo(Outputs.OFF);
        assertThat(bench.memory.strokesUsed()).isEqualTo(1);
    }

    @Test
    void aTokenDoesNotOutliveARestart() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        long token = bench.arm(Sampler.WATER);
        long arm = bench.lastOutcome().orderId();
        bench.restart(BootCause.BROWN_OUT).settle();

        bench.send(0, new QueryOutcome(arm));

        assertThat(bench.lastOutcome()).isEqualTo(Outcome.of(arm, Stage.COMPLETED));
        assertThat(bench.outcome(bench.trigger(Sampler.WATER, token)).reason()).isEqualTo(Reason.NOT_ARMED);
    }

    @Test
    void eventNumbersGoOnAfterARestart() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.arm(Sampler.WATER);

        bench.restart(BootCause.POWER);

        List<Event> kept = bench.memory.events().kept();
        for (int i = 0; i < kept.size(); i++) {
            assertThat(kept.get(i).number()).isEqualTo(i + 1);
        }
        assertThat(kept.get(kept.size() - 1).bootCount()).isEqualTo(2);
    }

    private static boolean isSettled(NonVolatile memory) {
        Outcome outcome = memory.outcomes().of(TRIGGER).orElseThrow();
        return outcome.stage() == Stage.COMPLETED
                || outcome.stage() == Stage.FAILED && outcome.reason() == Reason.RESTARTED;
    }

    /** The memory as it stood after every 10 ms from settling to well after the end of the act. */
    private static List<NonVolatile> cutAtEveryStep(Sampler sampler) {
        Bench bench = Bench.readyFor(sampler);
        List<NonVolatile> cuts = new ArrayList<>();
        long token = bench.arm(sampler);
        for (int step = 0; step < 20; step++) {
            bench.run(10);
            cuts.add(bench.memory.copy());
        }
        bench.send(TRIGGER, new Trigger(sampler, token));
        cuts.add(bench.memory.copy());
        while (bench.memory.acting().isPresent()) {
            bench.run(10);
            cuts.add(bench.memory.copy());
        }
        return cuts;
    }
}
