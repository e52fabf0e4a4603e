package ouzel.simulator.controller;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.ChangeSettings;
import ouzel.protocol.message.KeepAlive;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Outcome.Stage;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Reload;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Settings;
import ouzel.protocol.message.Trigger;
import ouzel.protocol.session.Envelope;

/** Every reason an order is refused for, with its figures. */
class RefusalsTest {

    @Test
    void refusesAnOrderThatComesLateAndSaysHowLate() {
        Bench bench = Bench.readyFor(Sampler.WATER);

        bench.deliver(new Envelope(9, 9, bench.now - 40, new Arm(Sampler.WATER, 100, 0)));

        assertThat(bench.outcome(9)).isEqualTo(Outcome.because(9, Stage.REFUSED, Reason.ORDER_EXPIRED, 40, 0));
    }

    @Test
    void refusesAHazardousOrderThatExpiresTooFarAhead() {
        Bench bench = Bench.readyFor(Sampler.WATER);

        bench.deliver(new Envelope(9, 9, bench.now + 2_501, new Arm(Sampler.WATER, 100, 0)));
        bench.deliver(new Envelope(10, 10, bench.now + 2_500, new Arm(Sampler.WATER, 100, 0)));

        assertThat(bench.outcome(9))
                .isEqualTo(Outcome.because(9, Stage.REFUSED, Reason.ORDER_FROM_FUTURE, 2_501, 2_500));
        assertThat(bench.outcome(10).stage()).isEqualTo(Stage.COMPLETED);
    }

    @Test
    void givesOtherOrdersTwelveSeconds() {
        Bench bench = Bench.readyFor(Sampler.WATER);

        bench.deliver(new Envelope(9, 9, bench.now + 12_001, new Reload(Sampler.WATER)));
        bench.deliver(new Envelope(10, 10, bench.now + 12_000, new Reload(Sampler.WATER)));

        assertThat(bench.outcome(9).reason()).isEqualTo(Reason.ORDER_FROM_FUTURE);
        assertThat(bench.outcome(10).stage()).isEqualTo(Stage.COMPLETED);
    }

    @Test
    void judgesExpiryAcrossTheWrapOfTheWireClock() {
        Bench bench = new Bench();
        bench.now = (1L << 32) - 5_000;
        bench.world.afloat();
        bench.settle();

        bench.deliver(new Envelope(9, 9, bench.now + 2_000 & 0xFFFF_FFFFL, new Arm(Sampler.WATER, 100, 0)));

        assertThat(bench.outcome(9).stage()).isEqualTo(Stage.COMPLETED);
    }

    @Test
    void refusesATriggerWithNothingArmed() {
        Bench bench = Bench.readyFor(Sampler.WATER);

        assertThat(bench.outcome(bench.trigger(Sampler.WATER, 1)).reason()).isEqualTo(Reason.NOT_ARMED);
    }

    @Test
    void refusesAWrongTokenAndLeavesTheSamplerArmed() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        long token = bench.arm(Sampler.WATER);

        assertThat(bench.outcome(bench.trigger(Sampler.WATER, token ^ 1)).reason())
                .isEqualTo(Reason.WRONG_TOKEN);
        assertThat(bench.state(Sampler.WATER)).isEqualTo(SamplerState.ARMED);
    }

    @Test
    void refusesATokenThatRanOutAndSaysHowOldItIs() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        long token = bench.arm(Sampler.WATER);
        bench.run(10_500);

        long order = bench.trigger(Sampler.WATER, token);

        assertThat(bench.outcome(order))
                .isEqualTo(Outcome.because(order, Stage.REFUSED, Reason.TOKEN_EXPIRED, 10_500, 10_000));
    }

    @Test
    void aNewArmOrderMakesTheEarlierTokenVoid() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        long first = bench.arm(Sampler.WATER);
        long second = bench.arm(Sampler.WATER);

        assertThat(bench.outcome(bench.trigger(Sampler.WATER, first)).reason()).isEqualTo(Reason.WRONG_TOKEN);
        assertThat(bench.outcome(bench.trigger(Sampler.WATER, second)).stage()).isEqualTo(Stage.STARTED);
    }

    @Test
    void refusesToArmBesideAnotherArmedSampler() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.arm(Sampler.WATER);

        assertThat(bench.armRefusal(Sampler.AIR)).isEqualTo(Reason.OTHER_ACTIVE);
    }

    @ParameterizedTest
    @EnumSource(Sampler.class)
    void refusesToArmReloadOrChangeWhatActs(Sampler sampler) {
        Bench bench = Bench.acting(sampler);

        assertThat(bench.armRefusal(sampler)).isEqualTo(Reason.BUSY);
        assertThat(bench.outcome(bench.send(new Reload(sampler))).reason()).isEqualTo(Reason.BUSY);
        assertThat(bench.outcome(bench.send(new ChangeSettings(Limits.factorySettings())))
                        .reason())
                .isEqualTo(Reason.BUSY);
    }

    @Test
    void refusesToReloadAnArmedSampler() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.arm(Sampler.WATER);

        assertThat(bench.outcome(bench.send(new Reload(Sampler.WATER))).reason())
                .isEqualTo(Reason.BUSY);
    }

    @Test
    void refusesASamplerInFaultUntilItIsReloaded() {
        Bench bench = Bench.acting(Sampler.WATER);
        bench.world.waterMilliamps = 0;
        bench.run(4_000);

        assertThat(bench.armRefusal(Sampler.WATER)).isEqualTo(Reason.SAMPLER_FAULT);
        bench.send(new Reload(Sampler.WATER));
        assertThat(bench.armRefusal(Sampler.WATER)).isEqualTo(Reason.NONE);
    }

    @Test
    void refusesASamplerThatIsNotFitted() {
        Bench bench = new Bench(Capability.all() & ~Capability.SOIL_SAMPLER.bit());
        bench.world.onGround();
        bench.settle();

        assertThat(bench.armRefusal(Sampler.SOIL)).isEqualTo(Reason.NOT_FITTED);
    }

    @Test
    void refusesEveryFigureOfASettingsBlockThatPassesItsCeiling() {
        Settings top = Limits.standard().ceilings();
        Settings flow = new Settings(400, 680, 500, 90_000, 90_000, 20, 2_001, 6_000, 10_000, true, true);
        Settings run = new Settings(400, 680, 500, 90_000, 90_001, 20, 2_000, 6_000, 10_000, true, true);

        assertThat(Ceilings.passed(top, top)).isEmpty();
        assertThat(Ceilings.passed(flow, top)).contains(new Ceilings.Passed(2_001, 2_000));
        assertThat(Ceilings.passed(run, top)).contains(new Ceilings.Passed(90_001, 90_000));
    }

    @Test
    void anAbsentSensorIsMetOnlyByAttestationInThatVeryOrder() {
        Bench bench = new Bench(Capability.all() & ~Capability.TILT.bit());
        bench.world.afloat();
        bench.settle();

        long without = bench.send(new Arm(Sampler.WATER, 100, 0));
        long with = bench.send(new Arm(Sampler.WATER, 100, Permissive.LEVEL_WATER.bit()));

        assertThat(bench.outcome(without).permissive()).isEqualTo(Permissive.LEVEL_WATER.code());
        assertThat(bench.outcome(with).stage()).isEqualTo(Stage.COMPLETED);
        assertThat(Permissive.LEVEL_WATER.isIn(bench.status().permissivesMet())).isTrue();
    }

    @Test
    void anAttestationEndsWithTheArming() {
        Bench bench = new Bench(Capability.all() & ~Capability.TILT.bit());
        bench.world.afloat();
        bench.settle();
        bench.send(new Arm(Sampler.WATER, 100, Permissive.LEVEL_WATER.bit()));

        bench.run(10_100);

        assertThat(Permissive.LEVEL_WATER.isIn(bench.status().permissivesMet())).isFalse();
        assertThat(bench.unmet(Sampler.WATER)).contains(Permissive.LEVEL_WATER);
    }

    @Test
    void ordersWithoutAnIdNeitherArmNorTrigger() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.send(0, new Arm(Sampler.WATER, 100, 0));
        SamplerState afterArm = bench.state(Sampler.WATER);
        long token = bench.arm(Sampler.WATER);

        bench.send(0, new Trigger(Sampler.WATER, token));

        assertThat(afterArm).isEqualTo(SamplerState.SAFE);
        assertThat(bench.outputs.isAllOff()).isTrue();
    }

    @Test
    void aKeepAliveThatComesLateDoesNotHoldTheDeadMan() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.arm(Sampler.WATER);
        bench.consoleIsThere = false;
        bench.run(1_400);

        bench.deliver(new Envelope(9, 0, bench.now - 1, new KeepAlive()));
        bench.run(100);

        assertThat(bench.state(Sampler.WATER)).isEqualTo(SamplerState.SAFE);
    }
}
