package ouzel.simulator.controller;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Outcome.Stage;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Readings.Switch;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Reload;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Stop;
import ouzel.simulator.plant.Outputs;

/** The soil stroke: its short sequence, and every way it can go wrong. */
class StrokeTest {

    @Test
    void opensTheValveForTheAskedTimeAndNoLonger() {
        Bench bench = Bench.acting(Sampler.SOIL);

        bench.run(Bench.STROKE_DOSE - 10);
        boolean openUntilThen = bench.outputs.soilValve();
        bench.run(10);

        assertThat(openUntilThen).isTrue();
        assertThat(bench.outputs.isAllOff()).isTrue();
    }

    @Test
    void isDoneWhenTheProbeIsHomeAgain() {
        Bench bench = Bench.acting(Sampler.SOIL);

        bench.run(400);

        assertEnd(bench, SamplerState.DONE, Stage.COMPLETED, Reason.NONE);
        assertThat(bench.events(Event.Kind.STROKE_COMPLETED))
                .extracting(Event::value)
                .containsExactly(Bench.STROKE_DOSE + 200 + 20);
    }

    @Test
    void isStrokingUntilTheProbeIsHome() {
        Bench bench = Bench.acting(Sampler.SOIL);
        bench.run(100);

        SamplerState onItsWayBack = bench.state(Sampler.SOIL);

        assertThat(bench.outputs.isAllOff()).isTrue();
        assertThat(onItsWayBack).isEqualTo(SamplerState.STROKING);
    }

    @Test
    void findsAProbeThatStaysHome() {
        Bench bench = Bench.readyFor(Sampler.SOIL);
        bench.world.probeStays = true;
        bench.trigger(Sampler.SOIL, bench.arm(Sampler.SOIL));

        bench.run(300);

        assertEnd(bench, SamplerState.FAULT, Stage.FAILED, Reason.PROBE_STAYED);
        assertThat(bench.lastOutcome().limit()).isEqualTo(300);
    }

    @Test
    void closesTheValveOfALongStrokeWhenTheProbeStaysHome() {
        Bench bench = Bench.readyFor(Sampler.SOIL);
        bench.world.probeStays = true;
        long arm = bench.send(new Arm(Sampler.SOIL, 250, 0));
        bench.trigger(Sampler.SOIL, bench.outcome(arm).token());

        bench.run(250);

        assertThat(bench.outputs.isAllOff()).isTrue();
    }

    @Test
    void findsAProbeThatDoesNotComeHome() {
        Bench bench = Bench.readyFor(Sampler.SOIL);
        bench.world.probeNeverReturns = true;
        bench.trigger(Sampler.SOIL, bench.arm(Sampler.SOIL));

        bench.run(Bench.STROKE_DOSE + 1_990);
        boolean waitedUntilThen = bench.events(Event.Kind.STROKE_FAILED).isEmpty();
        bench.run(10);

        assertThat(waitedUntilThen).isTrue();
        assertEnd(bench, SamplerState.FAULT, Stage.FAILED, Reason.PROBE_AWAY);
        assertThat(bench.kinds()).endsWith(Event.Kind.STROKE_FAILED, Event.Kind.FAULT);
    }

    @Test
    void safeAllClosesTheValveAtOnceAndStillWatchesTheProbeHome() {
        Bench bench = Bench.acting(Sampler.SOIL);
        bench.run(80);
        bench.send(new SafeAll());
        boolean closed = bench.controller.outputs().isAllOff();

        bench.run(300);

        assertThat(closed).isTrue();
        assertEnd(bench, SamplerState.SPENT, Stage.FAILED, Reason.BY_SAFE_ALL);
    }

    @Test
    void aStopBeforeTheProbeLeftEndsAsSpent() {
        Bench bench = Bench.acting(Sampler.SOIL);
        bench.run(20);

        bench.send(new Stop(Sampler.SOIL));
        bench.run(300);

        assertEnd(bench, SamplerState.SPENT, Stage.FAILED, Reason.BY_STOP);
    }

    @Test
    void aStoppedProbeThatDoesNotComeHomeIsAFaultAllTheSame() {
        Bench bench = Bench.acting(Sampler.SOIL);
        bench.world.probeNeverReturns = true;
        bench.run(80);

        bench.send(new Stop(Sampler.SOIL));
        bench.run(2_000);

        assertEnd(bench, SamplerState.FAULT, Stage.FAILED, Reason.PROBE_AWAY);
    }

    @Test
    void closesTheValveWhenTheLegsLift() {
        Bench bench = Bench.acting(Sampler.SOIL);
        bench.run(50);
        bench.world.set(Switch.LEGS, false);
        bench.run(30);
        boolean closed = bench.outputs.isAllOff();

        bench.run(300);

        assertThat(closed).isTrue();
        assertEnd(bench, SamplerState.SPENT, Stage.FAILED, Reason.PERMISSIVE);
        assertThat(bench.lastOutcome().permissive()).isEqualTo(Permissive.ON_GROUND.code());
    }

    @Test
    void completesWithoutTheConsole() {
        Bench bench = Bench.readyFor(Sampler.SOIL);
        long token = bench.arm(Sampler.SOIL);
        bench.consoleIsThere = false;
        bench.trigger(Sampler.SOIL, token);
        bench.controller.sessionOpened(2, bench.now);

        bench.run(2_000);

        assertEnd(bench, SamplerState.DONE, Stage.COMPLETED, Reason.NONE);
    }

    @Test
    void countsTheStrokeWhenTheValveOpensAndForgetsTheCountWithAFreshCartridge() {
        Bench bench = Bench.acting(Sampler.SOIL);
        int counted = bench.memory.strokesUsed();
        bench.run(1_000);

        bench.send(new Reload(Sampler.SOIL));

        assertThat(counted).isEqualTo(1);
        assertThat(bench.status().readings().strokesLeft())
                .isEqualTo(Limits.factorySettings().strokesPerCartridge());
    }

    @Test
    void theValveIsNeverOpenWithThePlugOut() {
        Bench bench = Bench.readyFor(Sampler.SOIL);
        long token = bench.arm(Sampler.SOIL);
        bench.world.set(Switch.PLUG, false);
        bench.run(10);

        bench.trigger(Sampler.SOIL, token);

        assertThat(bench.outputs).isEqualTo(Outputs.OFF);
        assertThat(bench.events(Event.Kind.DISARMED)).extracting(Event::reason).containsExactly(Reason.PERMISSIVE);
    }

    private static void assertEnd(Bench bench, SamplerState state, Stage stage, Reason reason) {
        List<Outcome> outcomes = bench.memory.outcomes().kept();
        Outcome ended = outcomes.stream()
                .filter(outcome -> outcome.stage() == stage && outcome.tokenLifeMillis() == 0)
                .filter(outcome -> outcome.reason() == reason)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no such ending among " + outcomes));
        assertThat(ended.orderId()).isNotZero();
        assertThat(bench.memory.use(Sampler.SOIL)).isEqualTo(state);
        assertThat(bench.outputs.isAllOff()).isTrue();
        assertThat(bench.memory.acting()).isEmpty();
    }
}
