package ouzel.simulator.controller;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ouzel.protocol.message.AcknowledgeEvents;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.ChangeSettings;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Outcome.Stage;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Reload;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Settings;
import ouzel.protocol.message.Trigger;
import ouzel.protocol.session.Envelope;
import ouzel.simulator.plant.Outputs;

/** The invariants of the link that the board alone must hold, one sentence each. */
class InvariantsTest {
    // 1

    @Test
    void nothingActuatesWithoutAnOpenSession() {
        Bench bench = new Bench();
        bench.world.afloat();
        bench.run(3_600);

        bench.send(new Arm(Sampler.WATER, Bench.WATER_DOSE, 0));

        assertThat(bench.said(Outcome.class)).isEmpty();
        assertThat(bench.state(Sampler.WATER)).isEqualTo(SamplerState.SAFE);
    }

    @Test
    void nothingActuatesOnAStaleOrder() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        long token = bench.arm(Sampler.WATER);
        Envelope late = new Envelope(9, 9, bench.now, new Trigger(Sampler.WATER, token));

        bench.run(10);
        bench.deliver(late);

        assertThat(bench.outcome(9).reason()).isEqualTo(Reason.ORDER_EXPIRED);
        assertThat(bench.outputs).isEqualTo(Outputs.OFF);
    }

    @Test
    void nothingActuatesUnlessThatVerySamplerIsArmed() {
        Bench bench = new Bench();
        bench.world.afloat();
        bench.settle();
        long token = bench.arm(Sampler.WATER);

        long order = bench.trigger(Sampler.AIR, token);

        assertThat(bench.outcome(order).reason()).isEqualTo(Reason.NOT_ARMED);
        assertThat(bench.outputs).isEqualTo(Outputs.OFF);
    }

    @Test
    void nothingActuatesWithAnotherToken() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        long token = bench.arm(Sampler.WATER);

        long order = bench.trigger(Sampler.WATER, token + 1);

        assertThat(bench.outcome(order).reason()).isEqualTo(Reason.WRONG_TOKEN);
        assertThat(bench.outputs).isEqualTo(Outputs.OFF);
    }

    @Test
    void nothingActuatesOnceTheTokensLifeIsOverOnThePayloadsClock() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        long token = bench.arm(Sampler.WATER);
        bench.run(9_990);
        assertThat(bench.state(Sampler.WATER)).isNotEqualTo(SamplerState.DRAWING);

        long order = bench.trigger(Sampler.WATER, token);

        assertThat(bench.outcome(order).reason()).isEqualTo(Reason.TOKEN_EXPIRED);
        assertThat(bench.outputs).isEqualTo(Outputs.OFF);
    }

    @Test
    void nothingActuatesWhileAPermissiveFailsAtThatInstant() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        long token = bench.arm(Sampler.WATER);
        bench.world.tiltTenths = 260;
        bench.run(100);

        long order = bench.trigger(Sampler.WATER, token);

        assertThat(bench.outcome(order).permissive()).isEqualTo(Permissive.LEVEL_WATER.code());
        assertThat(bench.outputs).isEqualTo(Outputs.OFF);
    }

    // 2

    @ParameterizedTest
    @EnumSource(Sampler.class)
    void aTriggerRunsAtMostOnceHoweverOftenItIsRepeated(Sampler sampler) {
        Bench bench = Bench.readyFor(sampler);
        Trigger trigger = new Trigger(sampler, bench.arm(sampler));
        bench.send(55, trigger);
        bench.run(40_000);

        bench.send(sampler.code(), new Reload(sampler));
        bench.send(55, trigger);

        assertThat(bench.outcome(55).stage()).isEqualTo(Stage.COMPLETED);
        assertThat(bench.outputs).isEqualTo(Outputs.OFF);
        assertThat(bench.kinds())
                .containsOnlyOnce(sampler.isPumped() ? Event.Kind.DRAW_STARTED : Event.Kind.STROKE_STARTED);
    }

    @Test
    void anArmingTokenIsUsedOnce() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        long token = bench.arm(Sampler.WATER);
        bench.trigger(Sampler.WATER, token);
        bench.send(new SafeAll());

        long again = bench.trigger(Sampler.WATER, token);

        assertThat(bench.outcome(again).reason()).isEqualTo(Reason.WRONG_TOKEN);
        assertThat(bench.outputs).isEqualTo(Outputs.OFF);
    }

    @Test
    void anOrderHeldBackForSecondsCannotMoveAnything() {
        Bench bench = Bench.readyFor(Sampler.SOIL);
        Envelope held = new Envelope(9, 9, bench.now + 2_000, new Trigger(Sampler.SOIL, bench.arm(Sampler.SOIL)));
        bench.run(2_010);

        bench.deliver(held);

        assertThat(bench.outcome(9).reason()).isEqualTo(Reason.ORDER_EXPIRED);
        assertThat(bench.state(Sampler.SOIL)).isEqualTo(SamplerState.ARMED);
    }

    // 3

    @ParameterizedTest
    @EnumSource(Sampler.class)
    void safeAllSwitchesEverythingOffBeforeTheNextStep(Sampler sampler) {
        Bench bench = Bench.acting(sampler);
        bench.run(50);
        assertThat(bench.controller.outputs().isAllOff()).isFalse();

        bench.send(new SafeAll());

        assertThat(bench.controller.outputs()).isEqualTo(Outputs.OFF);
        assertThat(bench.lastOutcome().stage()).isEqualTo(Stage.COMPLETED);
    }

    @Test
    void safeAllIsObeyedLateRepeatedAndWithoutASession() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        Envelope late = new Envelope(9, 9, bench.now - 1_000, new SafeAll());
        bench.arm(Sampler.WATER);
        bench.deliver(late);
        bench.arm(Sampler.WATER);

        bench.deliver(late);
        new Bench().send(new SafeAll());

        assertThat(bench.state(Sampler.WATER)).isEqualTo(SamplerState.SAFE);
        assertThat(bench.outcome(9).stage()).isEqualTo(Stage.COMPLETED);
    }

    // 4

    @Test
    void anArmedSamplerGoesSafeByItselfAfterOneAndAHalfSecondsOfSilence() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.arm(Sampler.WATER);
        bench.consoleIsThere = false;

        bench.run(1_490);
        boolean armedBefore = bench.events(Event.Kind.DISARMED).isEmpty();
        bench.run(10);

        assertThat(armedBefore).isTrue();
        assertThat(bench.events(Event.Kind.DISARMED)).extracting(Event::reason).containsExactly(Reason.KEEP_ALIVE_LOST);
        assertThat(bench.events(Event.Kind.KEEP_ALIVE_LOST))
                .extracting(Event::value)
                .containsExactly(1_500);
    }

    @Test
    void aRunningDrawThatMayFinishAloneReachesItsDoseWithoutTheConsole() {
        Bench bench = Bench.acting(Sampler.WATER);
        bench.consoleIsThere = false;

        bench.run(40_000);

        assertThat(bench.lastOutcome().reason()).isEqualTo(Reason.DOSE_REACHED);
        assertThat(bench.kinds()).containsOnlyOnce(Event.Kind.KEEP_ALIVE_LOST);
    }

    @Test
    void aRunningDrawThatMayNotFinishAloneStopsWhenTheConsoleIsLost() {
        Bench bench = Bench.acting(Sampler.AIR);
        bench.consoleIsThere = false;

        bench.run(1_500);

        assertThat(bench.outputs).isEqualTo(Outputs.OFF);
        assertThat(bench.lastOutcome().reason()).isEqualTo(Reason.KEEP_ALIVE_LOST);
        assertThat(bench.memory.use(Sampler.AIR)).isEqualTo(SamplerState.SPENT);
    }

    @Test
    void nothingNewStartsAfterTheConsoleWasLost() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        long token = bench.arm(Sampler.WATER);
        bench.consoleIsThere = false;
        bench.now += 1_600;

        long order = bench.trigger(Sampler.WATER, token);

        assertThat(bench.outcome(order).reason()).isEqualTo(Reason.NOT_ARMED);
        assertThat(bench.outputs).isEqualTo(Outputs.OFF);
    }

    // 5

    @ParameterizedTest
    @EnumSource(BootCause.class)
    void everyStartHasOutputsOffAllSafeNoSessionAndOneMoreBoot(BootCause cause) {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.arm(Sampler.WATER);

        bench.restart(cause);

        assertThat(bench.controller.outputs()).isEqualTo(Outputs.OFF);
        assertThat(bench.state(Sampler.WATER)).isEqualTo(SamplerState.SAFE);
        assertThat(bench.status().session()).isZero();
        assertThat(bench.status().bootCount()).isEqualTo(2);
        assertThat(bench.events(Event.Kind.BOOTED)).extracting(Event::value).endsWith(cause.code());
    }

    // 6

    @Test
    void atMostOneSamplerIsArmed() {
        Bench bench = Bench.readyFor(Sampler.SOIL);
        bench.arm(Sampler.AIR);

        Reason reason = bench.armRefusal(Sampler.SOIL);

        assertThat(reason).isEqualTo(Reason.OTHER_ACTIVE);
        assertThat(bench.status().states()).containsExactly(SamplerState.SAFE, SamplerState.ARMED, SamplerState.SAFE);
    }

    @Test
    void theSoilProbeIsNeverArmedWhileAPumpRuns() {
        Bench bench = Bench.acting(Sampler.AIR);
        bench.world.onGround();
        bench.run(3_600);

        assertThat(bench.armRefusal(Sampler.SOIL)).isEqualTo(Reason.OTHER_ACTIVE);
        assertThat(bench.state(Sampler.SOIL)).isEqualTo(SamplerState.SAFE);
    }

    // 7

    @Test
    void everyStartEndAndFaultIsKeptUntilAcknowledged() {
        Bench bench = Bench.acting(Sampler.WATER);
        bench.run(500);
        bench.world.waterMilliamps = 0;
        bench.run(2_000);
        bench.restart(BootCause.POWER).settle();

        assertThat(bench.kinds())
                .containsSubsequence(
                        Event.Kind.ARMED,
                        Event.Kind.DRAW_STARTED,
                        Event.Kind.DRAW_ENDED_EARLY,
                        Event.Kind.FAULT,
                        Event.Kind.BOOTED);
        bench.send(new AcknowledgeEvents(bench.memory.events().newest()));
        assertThat(bench.kinds()).isEmpty();
    }

    // 8

    @Test
    void readingsOlderThanOneSecondSatisfyNoPermissive() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.now += 1_010;

        assertThat(bench.unmet(Sampler.WATER)).contains(Permissive.PLUG_FITTED);
    }

    @Test
    void aSensorWhoseNoiseHasDiedSatisfiesNoPermissive() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.world.tiltFrozen = true;

        bench.run(5_100);

        assertThat(bench.unmet(Sampler.WATER)).contains(Permissive.LEVEL_WATER);
    }

    // 11

    @Test
    void theBoardRefusesOnItsOwnWhateverTheConsoleAttests() {
        Bench bench = Bench.readyFor(Sampler.AIR);

        long order = bench.send(new Arm(Sampler.WATER, Bench.WATER_DOSE, Permissive.bitsOf(Sampler.WATER)));

        assertThat(bench.outcome(order).stage()).isEqualTo(Stage.REFUSED);
        assertThat(bench.outcome(order).permissive()).isEqualTo(Permissive.AFLOAT.code());
    }

    // 12

    @Test
    void aRefusalNamesTheConditionWhatWasMeasuredAndTheLimit() {
        Bench bench = Bench.readyFor(Sampler.SOIL);
        bench.world.tiltTenths = 112;
        bench.world.tiltFrozen = true;
        bench.run(100);

        long order = bench.send(new Arm(Sampler.SOIL, Bench.STROKE_DOSE, 0));

        assertThat(bench.outcome(order)).isEqualTo(Outcome.unmet(order, Permissive.LEVEL_SOIL, 112, 80));
    }

    // 13

    @Test
    void noSettingPassesItsCeilingOnBoard() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        Settings asked = new Settings(300, 620, 501, 60_000, 60_000, 12, 830, 2_100, 10_000, true, false);

        long order = bench.send(new ChangeSettings(asked));

        assertThat(bench.outcome(order))
                .isEqualTo(Outcome.because(order, Stage.REFUSED, Reason.SETTING_OVER_CEILING, 501, 500));
        assertThat(bench.memory.settings()).isEqualTo(Bench.settings());
    }

    @Test
    void noDosePassesTheLimitOnBoard() {
        Bench bench = Bench.readyFor(Sampler.WATER);

        long order = bench.send(new Arm(Sampler.WATER, 301, 0));

        assertThat(bench.outcome(order))
                .isEqualTo(Outcome.because(order, Stage.REFUSED, Reason.DOSE_OVER_LIMIT, 301, 300));
    }

    @Test
    void noMoreStrokesAreTakenThanTheCartridgeIsGoodFor() {
        Bench bench = Bench.readyFor(Sampler.SOIL);
        bench.memory.settings(new Settings(300, 620, 250, 60_000, 60_000, 0, 830, 2_100, 10_000, true, false));
        bench.run(20);

        assertThat(bench.unmet(Sampler.SOIL)).contains(Permissive.STROKES_LEFT);
    }

    // 14

    @ParameterizedTest
    @EnumSource(Sampler.class)
    void aUsedSamplerStaysUsedUntilAPersonRecordsTheChange(Sampler sampler) {
        Bench bench = Bench.acting(sampler);
        bench.run(40_000);
        bench.restart(BootCause.POWER).settle();
        Reason before = bench.armRefusal(sampler);

        bench.send(new Reload(sampler));

        assertThat(before).isEqualTo(Reason.SAMPLER_USED);
        assertThat(bench.arm(sampler)).isNotZero();
    }
}
