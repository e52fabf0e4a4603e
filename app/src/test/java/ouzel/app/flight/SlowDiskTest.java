package ouzel.app.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import ouzel.app.desk.Act;
import ouzel.app.desk.Condition;
import ouzel.app.desk.Conditions;
import ouzel.app.desk.OrderTrack;
import ouzel.app.desk.Phase;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.frame.FrameParser;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.session.PairingKey;
import ouzel.simulator.profile.ProfileFile;
import ouzel.simulator.radio.Weather;
import ouzel.simulator.rehearsal.Site;

/** Nothing hazardous leaves before the journal holds what led to it, however long the disk takes. */
final class SlowDiskTest {
    private static final String FULL = "The journal cannot be written: No space left on device.";

    private final SlowDisk disk = new SlowDisk();
    private final List<Integer> kindsSent = new ArrayList<>();
    private final VirtualFlight flight = new VirtualFlight(
            new VirtualFlight.World(ProfileFile.reference(), Site.QUARRY, Weather.CLEAR, 1),
            disk,
            PairingKey.rehearsal(),
            bytes -> {
                new FrameParser()
                        .feed(bytes, frame -> kindsSent.add(frame.header().kind()));
                return true;
            });

    @BeforeEach
    void armAir() {
        flight.runTo(4_000);
        flight.act(new Act.Arm(Sampler.AIR));
        flight.runTo(4_500);
        assertThat(flight.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.ARMED);
    }

    @Test
    void noRepetitionOfATriggerOvertakesTheDisk() {
        disk.standStill();
        flight.act(new Act.Trigger(Sampler.AIR));
        flight.runTo(flight.nowMillis() + 900);

        assertThat(kindsSent).doesNotContain(Kind.TRIGGER.code());
        assertThat(flight.payload().truth().air().onMillis()).isZero();
    }

    @Test
    void aTriggerLeavesOnceADiskThatWasSlowHoldsIt() {
        disk.standStill();
        flight.act(new Act.Trigger(Sampler.AIR));
        flight.runTo(flight.nowMillis() + 900);

        disk.goOn();
        flight.runTo(flight.nowMillis() + 1_000);

        assertThat(flight.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.DRAWING);
    }

    @Test
    void aTriggerThatWaitedTooLongForTheDiskNeverLeavesAndSaysSo() {
        disk.standStill();
        flight.act(new Act.Trigger(Sampler.AIR));
        flight.runTo(flight.nowMillis() + 1_600);

        disk.goOn();
        flight.runTo(flight.nowMillis() + 3_000);

        assertThat(kindsSent).doesNotContain(Kind.TRIGGER.code());
        assertThat(trigger().stage()).isEqualTo(OrderTrack.Stage.REFUSED);
        assertThat(trigger().words()).contains("not sent: the disk took 1600 ms");
    }

    @Test
    void aDiskThatFailsUnderATriggerHoldsItBackAndTheNextArmIsRefusedInWords() {
        disk.standStill();
        flight.act(new Act.Trigger(Sampler.AIR));
        flight.runTo(flight.nowMillis() + 700);
        disk.fail(FULL);
        flight.runTo(flight.nowMillis() + 12_000);
        flight.act(new Act.Arm(Sampler.AIR));
        flight.runTo(flight.nowMillis() + 1_000);

        assertThat(kindsSent).doesNotContain(Kind.TRIGGER.code()).containsOnlyOnce(Kind.ARM.code());
        assertThat(trigger().stage()).isEqualTo(OrderTrack.Stage.REFUSED);
        assertThat(Conditions.rows(flight.state(), Sampler.AIR))
                .anyMatch(row -> row.condition() == Condition.JOURNAL && !row.isMet());
        assertThat(flight.state().notes()).anyMatch(note -> note.sentence().contains("No space left on device"));
        assertThat(flight.state().notes())
                .anyMatch(note -> note.sentence().startsWith("Arm not sent: journal written"));
    }

    private OrderTrack trigger() {
        return flight.state().lane(Sampler.AIR).trigger().orElseThrow();
    }
}
