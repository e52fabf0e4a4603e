package ouzel.app.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ouzel.app.desk.Act;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Phase;
import ouzel.app.journal.MemoryJournal;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.ParserCounts;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.session.PairingKey;
import ouzel.simulator.profile.ProfileFile;
import ouzel.simulator.rehearsal.Pilot;
import ouzel.simulator.rehearsal.SimulatedPayload;
import ouzel.simulator.rehearsal.Site;

/** A computer that slept, and a payload that another console took: neither is believed to be as it was. */
class ConsoleStandstillTest {
    private final SimulatedPayload payload = new SimulatedPayload(
            SimulatedPayload.reference(ProfileFile.reference(), 1, PairingKey.rehearsal(), () -> 7L),
            new Pilot(Site.QUARRY));
    private final List<Frame> unread = new ArrayList<>();
    private final Seat first = new Seat(1);
    private final Seat second = new Seat(100);
    private boolean isAsleep;
    private long millis;
    private long wallAheadMillis;

    @Test
    void framesThatWaitedThroughASleepAreOldHoweverFreshTheyLook() {
        flyUntilArmed();

        isAsleep = true;
        run(3_000, first);
        isAsleep = false;
        unread.forEach(first.console::heard);

        assertThat(first.console.state().isLinkFresh()).isFalse();
        assertThat(first.console.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.UNKNOWN);
        assertThat(first.notes()).anyMatch(note -> note.startsWith("This computer slept or stood still for 3 s"));
    }

    @Test
    void aSleepInWhichTheMonotonicClockStoodStillIsNoticedToo() {
        flyUntilArmed();

        wallAheadMillis = 7_200_000;
        first.console.tick();

        assertThat(first.console.state().isLinkFresh()).isFalse();
        assertThat(first.notes()).anyMatch(note -> note.startsWith("This computer slept or stood still for 7200 s"));
    }

    @Test
    void afterASleepThePayloadIsAskedAnewAndFoundSafe() {
        flyUntilArmed();

        isAsleep = true;
        run(4_000, first);
        isAsleep = false;
        run(2_000, first);

        assertThat(first.console.state().isLinkFresh()).isTrue();
        assertThat(first.console.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.SAFE);
    }

    @Test
    void aShortHoldUpIsNoSleep() {
        flyUntilArmed();

        isAsleep = true;
        run(1_000, first);
        isAsleep = false;
        run(200, first);

        assertThat(first.notes()).noneMatch(note -> note.startsWith("This computer slept"));
    }

    @Test
    void aPayloadThatAnotherConsoleTookComesBackOnlyWhenAPersonAsks() {
        flyUntilArmed();
        second.console.lineUp("The same radio.");
        run(4_000, first, second);
        assertThat(first.notes()).anyMatch(note -> note.contains("Reconnect takes it back"));
        assertThat(first.console.state().session().open()).isFalse();

        first.console.act(new Act.Reconnect());
        run(2_000, first, second);

        assertThat(first.console.state().session().open()).isTrue();
        assertThat(second.console.state().session().open()).isFalse();
    }

    @Test
    void reconnectingWithoutNeedChangesNothing() {
        flyUntilArmed();
        long session = first.console.state().session().number();

        first.console.act(new Act.Reconnect());
        run(1_000, first);

        assertThat(first.console.state().session().number()).isEqualTo(session);
        assertThat(first.console.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.ARMED);
    }

    @Test
    void theHeaderKnowsTheRoundTripAndThePayloadsClockWithoutAnOrder() {
        first.console.lineUp("The radio.");
        run(8_000, first);

        assertThat(first.console.state().link().roundTripMillis()).isBetween(1.0, 100.0);
        assertThat(first.console.state().link().clockUncertaintyMillis()).isLessThan(60);
        assertThat(first.console.state().link().deliveryLow()).isBetween(0.8, 1.0);
        assertThat(first.console.state().link().airTimeShare()).isBetween(0.05, 0.5);
    }

    private void flyUntilArmed() {
        first.console.lineUp("The radio.");
        run(4_000, first);
        first.console.act(new Act.Arm(Sampler.AIR));
        run(500, first);
        assertThat(first.console.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.ARMED);
    }

    /** Moves the payload and the consoles on; while asleep the consoles stand still and frames pile up. */
    private void run(long forMillis, Seat... seats) {
        long end = millis + forMillis;
        while (millis < end) {
            millis += SimulatedPayload.STEP_MILLIS;
            payload.step();
            List<Frame> spoken = payload.takeFrames();
            if (isAsleep) {
                unread.addAll(spoken);
            } else {
                List.of(seats).forEach(seat -> seat.live(spoken));
            }
        }
    }

    /** One console on the radio, with all that it sends heard by the payload at once. */
    private final class Seat implements FrameOut {
        private final Console console;

        Seat(int firstOrderId) {
            Setup setup = new Setup(PairingKey.rehearsal(), 0, Randomness.nonces(), firstOrderId, true, "reed bed");
            console = new Console(setup, this::now, new MemoryJournal(), this, cue -> {});
        }

        private Moment now() {
            return new Moment(millis * 1_000_000, 1_800_000_000_000L + millis + wallAheadMillis);
        }

        void live(List<Frame> spoken) {
            spoken.forEach(console::heard);
            if (millis % 100 == 0) {
                console.tick();
            }
        }

        List<String> notes() {
            return console.state().notes().stream().map(note -> note.sentence()).toList();
        }

        @Override
        public void send(Frame frame) {
            payload.hear(frame);
        }

        @Override
        public void sendUrgent(Frame frame) {
            payload.hear(frame);
        }

        @Override
        public ParserCounts counts() {
            return ParserCounts.NONE;
        }
    }
}
