package ouzel.simulator.controller;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Outcome.Stage;
import ouzel.protocol.message.QueryOutcome;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Stop;
import ouzel.protocol.message.Trigger;
import ouzel.protocol.session.Envelope;

/** Orders that come twice, late, or in another order than they were sent. */
class RepeatsTest {

    @Test
    void aRepeatedArmOrderGetsTheSameTokenWithTheLifeItHasLeft() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        Arm arm = new Arm(Sampler.WATER, 100, 0);
        bench.send(9, arm);
        long token = bench.lastOutcome().token();
        bench.run(4_000);

        bench.send(9, arm);

        assertThat(bench.lastOutcome()).isEqualTo(Outcome.armed(9, token, 6_000));
        assertThat(bench.kinds()).containsOnlyOnce(Event.Kind.ARMED);
    }

    @Test
    void aRepeatedArmOrderDoesNotArmAgainOnceItsTokenIsGone() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        Arm arm = new Arm(Sampler.WATER, 100, 0);
        bench.send(9, arm);
        bench.send(new SafeAll());

        bench.send(9, arm);

        assertThat(bench.lastOutcome()).isEqualTo(Outcome.of(9, Stage.COMPLETED));
        assertThat(bench.state(Sampler.WATER)).isEqualTo(SamplerState.SAFE);
    }

    @Test
    void aTriggerThatOvertakesItsArmOrderIsRefusedForGood() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.send(10, new Trigger(Sampler.WATER, 1));
        long token = bench.arm(Sampler.WATER);

        bench.send(10, new Trigger(Sampler.WATER, token));

        assertThat(bench.lastOutcome().reason()).isEqualTo(Reason.NOT_ARMED);
        assertThat(bench.outputs.isAllOff()).isTrue();
    }

    @Test
    void aStopThatOvertakesTheTriggerKeepsItFromStarting() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        long token = bench.arm(Sampler.WATER);
        bench.send(new Stop(Sampler.WATER));

        long trigger = bench.trigger(Sampler.WATER, token);

        assertThat(bench.outcome(trigger).reason()).isEqualTo(Reason.NOT_ARMED);
        assertThat(bench.outputs.isAllOff()).isTrue();
    }

    @Test
    void aRepeatedStopDoesNotEndALaterDraw() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.send(9, new Stop(Sampler.WATER));
        bench.trigger(Sampler.WATER, bench.arm(Sampler.WATER));

        bench.send(9, new Stop(Sampler.WATER));

        assertThat(bench.outputs.waterPump()).isTrue();
    }

    @Test
    void aStopIsObeyedHoweverLateItComes() {
        Bench bench = Bench.acting(Sampler.WATER);

        bench.deliver(new Envelope(9, 9, bench.now - 60_000, new Stop(Sampler.WATER)));

        assertThat(bench.outputs.isAllOff()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 10, 300, 1_500, 1_990, 5_000, 60_000})
    void aTriggerRepeatedAfterAnyTimeNeverStartsASecondDraw(int laterMillis) {
        Bench bench = Bench.readyFor(Sampler.WATER);
        Envelope trigger = new Envelope(9, 9, bench.now + 2_000, new Trigger(Sampler.WATER, bench.arm(Sampler.WATER)));
        bench.deliver(trigger);
        bench.run(laterMillis);

        bench.deliver(trigger);

        assertThat(bench.kinds()).containsOnlyOnce(Event.Kind.DRAW_STARTED);
        assertThat(bench.outcome(9).stage()).isNotEqualTo(Stage.REFUSED);
    }

    @Test
    void aQuestionGetsTheNewestStageOfTheOrder() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        long trigger = bench.trigger(Sampler.WATER, bench.arm(Sampler.WATER));
        bench.run(1_100);

        bench.send(0, new QueryOutcome(trigger));

        assertThat(bench.lastOutcome().stage()).isEqualTo(Stage.PROGRESS);
    }

    @Test
    void repeatedSafeAllsLeaveOneEvent() {
        Bench bench = Bench.acting(Sampler.SOIL);

        for (int i = 0; i < 10; i++) {
            bench.send(9, new SafeAll());
            bench.run(50);
        }

        assertThat(bench.kinds()).containsOnlyOnce(Event.Kind.SAFED);
        assertThat(bench.outcomes(9)).hasSize(10);
    }
}
