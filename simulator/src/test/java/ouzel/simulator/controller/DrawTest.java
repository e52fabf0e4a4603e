package ouzel.simulator.controller;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Outcome.Stage;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Readings.Switch;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Settings;
import ouzel.protocol.message.Stop;

/** Every way a pump's run can end. */
class DrawTest {
    /** Blank of the inrush, then the dose at the flow in the settings: 200 mL at 8.3 mL/s, on the grid of steps. */
    private static final int WATER_RUN_MILLIS = 400 + 24_100;

    @Test
    void endsWhenTheDoseIsReachedAndNotAStepEarlier() {
        Bench bench = Bench.acting(Sampler.WATER);

        bench.run(WATER_RUN_MILLIS - 10);
        boolean ranUntilThen = bench.outputs.waterPump();
        bench.run(10);

        assertThat(ranUntilThen).isTrue();
        assertEnd(bench, Sampler.WATER, SamplerState.DONE, Stage.COMPLETED, Reason.DOSE_REACHED, 200, 200);
        assertThat(bench.events(Event.Kind.DRAW_COMPLETED))
                .extracting(Event::value)
                .containsExactly(200);
    }

    @Test
    void saysEveryStageAndItsProgressTwiceASecond() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        long order = bench.trigger(Sampler.WATER, bench.arm(Sampler.WATER));
        bench.run(2_100);

        List<Outcome> said = bench.outcomes(order);

        assertThat(said)
                .extracting(Outcome::stage)
                .containsExactly(
                        Stage.ACCEPTED, Stage.STARTED, Stage.PROGRESS, Stage.PROGRESS, Stage.PROGRESS, Stage.PROGRESS);
        assertThat(said.get(5)).isEqualTo(Outcome.because(order, Stage.PROGRESS, Reason.NONE, 13, 200));
    }

    @Test
    void doesNotMeterBeforeThePumpIsPrimed() {
        Bench bench = Bench.acting(Sampler.WATER);
        bench.world.waterMilliamps = 650;
        bench.run(3_000);
        int dry = bench.status().meteredMillilitres();
        bench.world.waterMilliamps = World.WATER_WET_MILLIAMPS;

        bench.run(2_000);

        assertThat(dry).isZero();
        assertThat(bench.status().meteredMillilitres()).isBetween(16, 17);
    }

    @Test
    void endsAFullJarAsDoneWithNineTenthsOfTheDose() {
        Bench bench = Bench.acting(Sampler.WATER);
        bench.run(400 + 21_700);
        bench.world.set(Switch.JAR_FULL, true);

        bench.run(100);

        assertEnd(bench, Sampler.WATER, SamplerState.DONE, Stage.COMPLETED, Reason.JAR_FULL, 180, 200);
    }

    @Test
    void endsAFullJarAsSpentWithLess() {
        Bench bench = Bench.acting(Sampler.WATER);
        bench.run(10_000);
        bench.world.set(Switch.JAR_FULL, true);

        bench.run(60);

        assertEnd(bench, Sampler.WATER, SamplerState.SPENT, Stage.FAILED, Reason.JAR_FULL, 80, 200);
        assertThat(bench.events(Event.Kind.DRAW_ENDED_EARLY))
                .extracting(Event::reason)
                .containsExactly(Reason.JAR_FULL);
    }

    @Test
    void aSplashAtTheLevelSwitchDoesNotEndTheDraw() {
        Bench bench = Bench.acting(Sampler.WATER);
        bench.world.set(Switch.JAR_FULL, true);
        bench.run(40);
        bench.world.set(Switch.JAR_FULL, false);

        bench.run(100);

        assertThat(bench.outputs.waterPump()).isTrue();
    }

    @Test
    void endsAtTheBagsStopPressure() {
        Bench bench = Bench.acting(Sampler.AIR);
        bench.run(22_500);
        bench.world.bagPascals = 1_000;

        bench.run(60);

        assertEnd(bench, Sampler.AIR, SamplerState.DONE, Stage.COMPLETED, Reason.BAG_FULL, 1_000, 1_000);
    }

    @Test
    void endsAtTheBagsStopPressureAsSpentWithTooLittle() {
        Bench bench = Bench.acting(Sampler.AIR);
        bench.run(5_000);
        bench.world.bagPascals = 1_200;

        bench.run(60);

        assertEnd(bench, Sampler.AIR, SamplerState.SPENT, Stage.FAILED, Reason.BAG_FULL, 1_200, 1_000);
    }

    @Test
    void endsAtTheBagsHardPressureAtOnceAndAsAFault() {
        Bench bench = Bench.acting(Sampler.AIR);
        bench.run(5_000);
        bench.world.bagPascals = 2_000;

        bench.run(10);

        assertEnd(bench, Sampler.AIR, SamplerState.FAULT, Stage.FAILED, Reason.BAG_FULL, 2_000, 2_000);
    }

    @Test
    void endsAtTheLongestRun() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.memory.settings(new Settings(300, 620, 250, 9_000, 60_000, 12, 830, 2_100, 10_000, true, false));
        bench.trigger(Sampler.WATER, bench.arm(Sampler.WATER));

        bench.run(9_000);

        assertEnd(bench, Sampler.WATER, SamplerState.SPENT, Stage.FAILED, Reason.RUN_LIMIT, 9_000, 9_000);
    }

    @Test
    void givesUpWhenThePumpDoesNotPrime() {
        Bench bench = Bench.acting(Sampler.WATER);
        bench.world.waterMilliamps = 650;

        bench.run(8_000);

        assertEnd(bench, Sampler.WATER, SamplerState.SPENT, Stage.FAILED, Reason.RUN_LIMIT, 8_000, 8_000);
    }

    @Test
    void endsOverTheHardCurrentAfterFiftyMilliseconds() {
        Bench bench = Bench.acting(Sampler.WATER);
        bench.run(1_000);
        bench.world.waterMilliamps = 2_751;

        bench.run(50);
        boolean ranUntilThen = bench.outputs.waterPump();
        bench.run(10);

        assertThat(ranUntilThen).isTrue();
        assertEnd(bench, Sampler.WATER, SamplerState.FAULT, Stage.FAILED, Reason.OVER_CURRENT, 2_751, 2_750);
        assertThat(bench.events(Event.Kind.FAULT)).extracting(Event::value).containsExactly(2_751);
    }

    @Test
    void doesNotJudgeTheInrush() {
        Bench bench = Bench.acting(Sampler.WATER);
        bench.world.waterMilliamps = 4_000;

        bench.run(390);
        bench.world.waterMilliamps = World.WATER_WET_MILLIAMPS;
        bench.run(1_000);

        assertThat(bench.outputs.waterPump()).isTrue();
    }

    @Test
    void endsWhenNoCurrentFlows() {
        Bench bench = Bench.acting(Sampler.AIR);
        bench.world.airMilliamps = 19;

        bench.run(690);
        boolean ranUntilThen = bench.outputs.airPump();
        bench.run(10);

        assertThat(ranUntilThen).isTrue();
        assertEnd(bench, Sampler.AIR, SamplerState.FAULT, Stage.FAILED, Reason.NO_CURRENT, 19, 20);
    }

    @Test
    void endsWhenTheBatterySagsForHalfASecond() {
        Bench bench = Bench.acting(Sampler.WATER);
        bench.run(1_000);
        bench.world.batteryMillivolts = 9_599;

        bench.run(500);
        boolean ranUntilThen = bench.outputs.waterPump();
        bench.run(10);

        assertThat(ranUntilThen).isTrue();
        assertEnd(bench, Sampler.WATER, SamplerState.SPENT, Stage.FAILED, Reason.BATTERY_SAG, 9_599, 9_600);
    }

    @Test
    void endsWhenAPermissiveTripsAndNamesIt() {
        Bench bench = Bench.acting(Sampler.WATER);
        bench.world.set(Switch.FLOAT_A, false).set(Switch.FLOAT_B, false);

        bench.run(1_010);

        assertEnd(bench, Sampler.WATER, SamplerState.SPENT, Stage.FAILED, Reason.PERMISSIVE, 1, 2);
        assertThat(bench.lastOutcome().permissive()).isEqualTo(Permissive.AFLOAT.code());
    }

    @Test
    void endsByStop() {
        Bench bench = Bench.acting(Sampler.WATER);
        long trigger = bench.lastOutcome().orderId();
        bench.run(5_000);

        bench.send(new Stop(Sampler.WATER));

        assertThat(bench.outputs.isAllOff()).isTrue();
        assertThat(bench.outcome(trigger)).isEqualTo(Outcome.because(trigger, Stage.FAILED, Reason.BY_STOP, 0, 0));
        assertThat(bench.memory.use(Sampler.WATER)).isEqualTo(SamplerState.SPENT);
        assertThat(bench.lastOutcome().stage()).isEqualTo(Stage.COMPLETED);
    }

    @Test
    void aStopForAnotherSamplerChangesNothing() {
        Bench bench = Bench.acting(Sampler.WATER);

        bench.send(new Stop(Sampler.AIR));

        assertThat(bench.outputs.waterPump()).isTrue();
    }

    @Test
    void endsBySafeAll() {
        Bench bench = Bench.acting(Sampler.AIR);
        long trigger = bench.lastOutcome().orderId();

        bench.send(new SafeAll());

        assertThat(bench.outcome(trigger).reason()).isEqualTo(Reason.BY_SAFE_ALL);
        assertThat(bench.memory.use(Sampler.AIR)).isEqualTo(SamplerState.SPENT);
    }

    @Test
    void aNewSessionEndsADrawThatMayNotFinishAloneAndLeavesTheOther() {
        Bench air = Bench.acting(Sampler.AIR);
        Bench water = Bench.acting(Sampler.WATER);

        air.controller.sessionOpened(2, air.now);
        water.controller.sessionOpened(2, water.now);

        assertThat(air.memory.outcomes().kept()).extracting(Outcome::reason).contains(Reason.NEW_SESSION);
        assertThat(air.controller.outputs().isAllOff()).isTrue();
        assertThat(water.controller.outputs().waterPump()).isTrue();
    }

    @Test
    void aNewSessionDisarms() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.arm(Sampler.WATER);

        bench.controller.sessionOpened(2, bench.now);

        assertThat(bench.state(Sampler.WATER)).isEqualTo(SamplerState.SAFE);
        assertThat(bench.events(Event.Kind.DISARMED)).extracting(Event::reason).containsExactly(Reason.NEW_SESSION);
    }

    private static void assertEnd(
            Bench bench, Sampler sampler, SamplerState state, Stage stage, Reason reason, int measured, int limit) {
        Outcome last = bench.lastOutcome();
        assertThat(bench.outputs.isAllOff()).isTrue();
        assertThat(bench.memory.use(sampler)).isEqualTo(state);
        assertThat(List.of(last.stage(), last.reason())).containsExactly(stage, reason);
        assertThat(List.of(last.measured(), last.limit())).containsExactly(measured, limit);
        assertThat(bench.memory.acting()).isEmpty();
    }
}
