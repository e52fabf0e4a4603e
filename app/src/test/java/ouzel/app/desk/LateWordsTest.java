package ouzel.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Status;

/** Words that come late are no older and no younger than they are. */
final class LateWordsTest {
    private final DeskBench desk = DeskBench.ready();

    @Test
    void aStatusThatAModemHeldBackDoesNotMakeTheLinkFresh() {
        desk.pass(1_000).passInSilence(3_000);

        desk.hearLate(desk.status(), 2_500);

        assertThat(desk.state().isLinkFresh()).isFalse();
        assertThat(desk.state().statusAgeMillis()).isBetween(2_400L, 2_500L);
    }

    @Test
    void aStatusThatWasOvertakenDoesNotTakeThePlaceOfANewerOne() {
        desk.pass(1_000);
        Status safe = desk.status();
        desk.payload(Sampler.AIR, SamplerState.ARMED);

        desk.hearLate(safe, 300);

        assertThat(desk.lane(Sampler.AIR).phase()).isEqualTo(Phase.ARMED);
    }

    @Test
    void aStatusFromBeforeARestartIsNoSecondRestart() {
        desk.pass(1_000);
        Status former = desk.status();
        desk.restartsPayload();

        desk.hearLate(former, 500);

        assertThat(desk.state().ledger().bootCount()).isEqualTo(former.bootCount() + 1);
    }

    @Test
    void aStatusThatNamesNoSessionIsNotFresh() {
        desk.pass(1_000).losesSession();

        assertThat(desk.state().isLinkFresh()).isFalse();
        assertThat(desk.lane(Sampler.AIR).phase()).isEqualTo(Phase.UNKNOWN);
    }

    @Test
    void aStatusFromBeforeARestartIsNoNewMemoryHoweverLateItComes() {
        desk.pass(1_000).hearEvent(1, Event.Kind.BOOTED, Sampler.WATER, 0, Reason.NONE, 0);
        Status former = desk.status();
        desk.restartsPayload().holdsEvents(1, 2).passInSilence(15_000);

        desk.hearLate(former, 15_500);

        assertThat(desk.state().ledger().newestEvent()).isEqualTo(1);
    }

    @Test
    void aStatusFromBeforeTheSessionIsNoNewMemoryAfterALongSleep() {
        Status former = desk.losesSession().status();
        desk.pass(1_000).holdsEvents(1, 1).hearEvent(1, Event.Kind.BOOTED, Sampler.WATER, 0, Reason.NONE, 0);
        desk.feed(new Stimulus.SessionLost("Session lost.")).passInSilence(15_000);

        desk.hearLate(former, 16_000);

        assertThat(desk.state().ledger().newestEvent()).isEqualTo(1);
    }

    @Test
    void aStatusOfOurSessionFromBeforeARestartIsLate() {
        desk.pass(5_000);
        Status former = desk.status();
        desk.losesSession().restartsPayload();

        desk.hearLate(former, 4_000);

        assertThat(desk.state().isLinkFresh()).isFalse();
    }

    @Test
    void aPayloadWithANewMemoryIsBelievedOnceItHasASession() {
        desk.pass(1_000).reopensWithNewMemory(0x77);

        assertThat(desk.state().isLinkFresh()).isTrue();
        assertThat(desk.state().ledger().bootCount()).isEqualTo(1);
    }

    @Test
    void aPayloadClockThatRunsALittleSlowStaysFresh() {
        for (int minutes = 0; minutes < 60; minutes++) {
            desk.passInSilence(800);
            desk.hearLate(desk.status(), minutes * 4L);
        }

        assertThat(desk.state().isLinkFresh()).isTrue();
    }

    @Test
    void theFirstEventTakenIsTheOldestOnBoard() {
        desk.holdsEvents(1, 2);

        desk.hearEvent(2, Event.Kind.SESSION_OPENED, Sampler.WATER, 0, Reason.NONE, 0);
        assertThat(desk.state().ledger().newestEvent()).isZero();
        desk.hearEvent(1, Event.Kind.BOOTED, Sampler.WATER, 0, Reason.NONE, 0);

        assertThat(desk.state().ledger().newestEvent()).isEqualTo(1);
    }
}
