package ouzel.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import ouzel.app.desk.OrderTrack.Stage;
import ouzel.protocol.message.AcknowledgeEvents;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.FetchEvents;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.QueryOutcome;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Trigger;

/** How orders leave, are repeated, become unknown and are resolved. */
final class OrderFlowTest {
    private final DeskBench desk = DeskBench.ready();

    @Test
    void anArmLeavesOnlyAfterTheJournalIsSafe() {
        desk.act(new Act.Arm(Sampler.AIR));

        assertThat(desk.lastSend().order()).isEqualTo(new Arm(Sampler.AIR, 600, 0));
        assertThat(desk.lastSend().urgency()).isEqualTo(Effect.Urgency.DURABLE_FIRST);
    }

    @Test
    void aTriggerCarriesTheTokenOfItsArmAndUsesItUp() {
        desk.triggered(Sampler.AIR);

        assertThat(desk.lastSend().order()).isEqualTo(new Trigger(Sampler.AIR, 0xA11CEL));
        assertThat(desk.lastSend().urgency()).isEqualTo(Effect.Urgency.DURABLE_FIRST);
        assertThat(desk.lane(Sampler.AIR).token()).isZero();
    }

    @Test
    void anUnansweredTriggerIsRepeatedWithTheSameIdAndNeverOutlivesItsTwoSeconds() {
        long id = desk.triggered(Sampler.AIR);

        desk.pass(2_400);

        List<Effect.Send> repeats = desk.sendsOf(Trigger.class);
        assertThat(repeats).hasSizeGreaterThan(2).allMatch(send -> send.orderId() == id);
        assertThat(repeats.get(repeats.size() - 1).lifeMillis()).isLessThan(500).isPositive();
    }

    @Test
    void anAnsweredTriggerIsNotRepeated() {
        long id = desk.triggered(Sampler.AIR);

        desk.hear(Outcome.of(id, Outcome.Stage.ACCEPTED)).pass(2_000);

        assertThat(desk.sendsOf(Trigger.class)).hasSize(1);
    }

    @Test
    void silenceMakesATriggerUnknownAndOnlyQuestionsFollow() {
        long id = desk.triggered(Sampler.AIR);

        desk.pass(2_600).forgetSends().pass(3_000);

        assertThat(desk.lane(Sampler.AIR).trigger().orElseThrow().stage()).isEqualTo(Stage.UNKNOWN);
        assertThat(desk.lane(Sampler.AIR).phase()).isEqualTo(Phase.UNKNOWN);
        assertThat(desk.sendsOf(Trigger.class)).isEmpty();
        assertThat(desk.sendsOf(QueryOutcome.class))
                .isNotEmpty()
                .allMatch(send -> send.order().equals(new QueryOutcome(id)));
    }

    @Test
    void anUnknownOutcomeBlocksArmingAndTriggering() {
        desk.triggered(Sampler.AIR);
        desk.pass(2_600).payload(Sampler.AIR, SamplerState.SAFE).forgetSends();

        desk.act(new Act.Arm(Sampler.AIR)).act(new Act.Trigger(Sampler.AIR)).act(new Act.Arm(Sampler.WATER));

        assertThat(desk.sendsOf(Arm.class)).isEmpty();
        assertThat(desk.sendsOf(Trigger.class)).isEmpty();
    }

    @Test
    void thePayloadsRecordResolvesAnUnknownOutcome() {
        long id = desk.triggered(Sampler.AIR);
        desk.pass(2_600);

        desk.hear(Outcome.of(id, Outcome.Stage.COMPLETED));

        assertThat(desk.lane(Sampler.AIR).trigger().orElseThrow().stage()).isEqualTo(Stage.COMPLETED);
        assertThat(desk.hasNote("Trigger is resolved: completed")).isTrue();
    }

    @Test
    void anEventResolvesAnUnknownOutcomeAsWell() {
        long id = desk.triggered(Sampler.AIR);
        desk.pass(2_600);

        desk.hearEvent(1, Event.Kind.DRAW_COMPLETED, Sampler.AIR, id, Reason.DOSE_REACHED, 600);

        assertThat(desk.lane(Sampler.AIR).trigger().orElseThrow().stage()).isEqualTo(Stage.COMPLETED);
    }

    @Test
    void neverSeenCountsOnlyOnceNoCopyCanActAnyMore() {
        long id = desk.triggered(Sampler.AIR);

        desk.hear(Outcome.of(id, Outcome.Stage.NEVER_SEEN));
        assertThat(desk.lane(Sampler.AIR).trigger().orElseThrow().stage()).isEqualTo(Stage.SENT);

        desk.pass(2_600).hear(Outcome.of(id, Outcome.Stage.NEVER_SEEN));
        assertThat(desk.lane(Sampler.AIR).trigger().orElseThrow().stage()).isEqualTo(Stage.REFUSED);
    }

    @Test
    void aStageNeverGoesBack() {
        long id = desk.triggered(Sampler.AIR);

        desk.hear(Outcome.of(id, Outcome.Stage.COMPLETED)).hear(Outcome.of(id, Outcome.Stage.STARTED));

        assertThat(desk.lane(Sampler.AIR).trigger().orElseThrow().stage()).isEqualTo(Stage.COMPLETED);
    }

    @Test
    void safeAllGoesAheadOfEverythingAndIsRepeatedUntilConfirmed() {
        desk.act(new Act.SafeAll()).pass(1_000);
        List<Effect.Send> sent = desk.sendsOf(SafeAll.class);
        long id = sent.get(0).orderId();
        assertThat(sent).hasSizeGreaterThanOrEqualTo(5).allMatch(send -> send.urgency() == Effect.Urgency.AHEAD);

        desk.hear(Outcome.of(id, Outcome.Stage.COMPLETED)).forgetSends().pass(1_000);

        assertThat(desk.sendsOf(SafeAll.class)).isEmpty();
    }

    @Test
    void safeAllAskedForWithoutASessionGoesOutWhenThereIsOne() {
        desk.feed(new Stimulus.SessionLost("gone")).act(new Act.SafeAll());
        assertThat(desk.sendsOf(SafeAll.class)).isEmpty();

        desk.feed(new Stimulus.SessionOpened(7, DeskBench.SESSION)).pass(300);

        assertThat(desk.sendsOf(SafeAll.class)).isNotEmpty();
    }

    @Test
    void safeAllThrowsTheArmingTokenAway() {
        desk.armed(Sampler.WATER).act(new Act.SafeAll()).forgetSends();

        desk.act(new Act.Trigger(Sampler.WATER));

        assertThat(desk.sendsOf(Trigger.class)).isEmpty();
    }

    @Test
    void aLostSessionMakesOpenOrdersUnknownAndVoidsTheToken() {
        desk.armed(Sampler.WATER).act(new Act.Stop(Sampler.WATER)).feed(new Stimulus.SessionLost("restarted"));

        assertThat(desk.lane(Sampler.WATER).token()).isZero();
        assertThat(desk.lane(Sampler.WATER).isUnresolved()).isTrue();
    }

    @Test
    void anOrderThatCouldNotLeaveIsRefusedWithItsReason() {
        desk.afloat().act(new Act.Arm(Sampler.WATER));

        desk.feed(new Stimulus.NotSent(desk.lastSend().orderId(), "the journal cannot be written"));

        OrderTrack arm = desk.lane(Sampler.WATER).arm().orElseThrow();
        assertThat(arm.stage()).isEqualTo(Stage.REFUSED);
        assertThat(arm.words()).contains("journal cannot be written");
    }

    @Test
    void aRefusalNamesTheConditionWithWhatWasMeasuredAndTheLimit() {
        desk.act(new Act.Arm(Sampler.SOIL));
        attestAll();
        desk.act(new Act.Arm(Sampler.SOIL));

        desk.hear(Outcome.unmet(desk.lastSend().orderId(), Permissive.LEVEL_SOIL, 112, 80));

        assertThat(desk.hasNote("not level: 11.2° (limit 8.0°)")).isTrue();
    }

    @Test
    void eventsAreTakenInOrderAndMissingOnesAreFetched() {
        desk.holdsEvents(1, 3).hearEvent(1, Event.Kind.BOOTED, Sampler.WATER, 0, Reason.NONE, 0);

        desk.hearEvent(3, Event.Kind.RELOADED, Sampler.AIR, 0, Reason.NONE, 0).pass(600);

        assertThat(desk.state().ledger().newestEvent()).isEqualTo(1);
        assertThat(desk.sendsOf(FetchEvents.class))
                .anyMatch(send -> send.order().equals(new FetchEvents(2)));
    }

    @Test
    void aStatusThatAnEventHasOvertakenIsNotTakenForANewMemory() {
        desk.hearEvent(1, Event.Kind.BOOTED, Sampler.WATER, 0, Reason.NONE, 0)
                .hearEvent(2, Event.Kind.RELOADED, Sampler.AIR, 0, Reason.NONE, 0);

        desk.holdsEvents(1, 1);

        assertThat(desk.hasNote("its memory is new")).isFalse();
        assertThat(desk.state().ledger().newestEvent()).isEqualTo(2);
    }

    @Test
    void eventNumbersThatStayLowAreANewMemoryAndStartAgain() {
        desk.hearEvent(1, Event.Kind.BOOTED, Sampler.WATER, 0, Reason.NONE, 0)
                .hearEvent(2, Event.Kind.RELOADED, Sampler.AIR, 0, Reason.NONE, 0);

        desk.holdsEvents(1, 1).pass(10_100);

        assertThat(desk.hasNote("its memory is new")).isTrue();
        assertThat(desk.state().ledger().newestEvent()).isZero();
    }

    @Test
    void eventsAreAcknowledgedOnlyOnceTheJournalHoldsThem() {
        desk.holdsEvents(1, 1)
                .hearEvent(1, Event.Kind.BOOTED, Sampler.WATER, 0, Reason.NONE, 0)
                .pass(600);

        List<Effect.Send> acknowledged = desk.sendsOf(AcknowledgeEvents.class);

        assertThat(acknowledged).isNotEmpty().allMatch(send -> send.urgency() == Effect.Urgency.DURABLE_FIRST);
        assertThat(acknowledged.get(0).order()).isEqualTo(new AcknowledgeEvents(1));
    }

    private void attestAll() {
        for (Condition condition :
                List.of(Condition.PILOT_SAYS_STOPPED, Condition.PEOPLE_CLEAR, Condition.SERVICES_CHECKED)) {
            desk.act(new Act.Attest(condition, "Mara"));
        }
    }
}
