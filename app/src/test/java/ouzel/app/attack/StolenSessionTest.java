package ouzel.app.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ouzel.app.desk.Act;
import ouzel.protocol.codec.Decoded;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.message.Challenge;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Status;
import ouzel.simulator.controller.BootCause;
import ouzel.simulator.plant.Outputs;
import ouzel.simulator.rehearsal.SimulatedPayload;

/** Everything that was ever said, recorded and played again later, with good randomness and with none. */
class StolenSessionTest {
    @Test
    void aWholeSessionPlayedToTheSamePayloadAfterARestartOpensNothing() {
        Field field = flown(Field.inSession());
        List<Frame> recorded = List.copyOf(field.up);
        field.payload.cutPower();
        field.payload.restart(BootCause.POWER);

        assertThat(play(recorded, field.payload)).isEqualTo(new Play(Set.of(0L), false));
    }

    @Test
    void theSameHoldsWhenEveryRandomSourceIsStuck() {
        Field field = new Field(Field.KEY, Field.KEY, () -> 4L);
        field.run(4_000);
        flown(field);
        List<Frame> recorded = List.copyOf(field.up);
        field.payload.cutPower();
        field.payload.restart(BootCause.POWER);

        assertThat(play(recorded, field.payload)).isEqualTo(new Play(Set.of(0L), false));
    }

    @Test
    void aWholeSessionPlayedToAnotherPayloadWithTheSameKeyOpensNothing() {
        Field field = flown(Field.inSession());
        SimulatedPayload twin = Field.payload(Field.KEY, new SplittableRandom(77)::nextLong);

        assertThat(play(field.up, twin)).isEqualTo(new Play(Set.of(0L), false));
    }

    @Test
    void aRecordedSessionPlayedIntoALaterOneIsRefusedFrameByFrame() {
        Field field = flown(Field.inSession());
        List<Frame> recorded = List.copyOf(field.up);
        field.payload.cutPower();
        field.payload.restart(BootCause.BROWN_OUT);
        field.run(6_000);
        Field.Standing before = field.standing();

        recorded.forEach(field.payload::hear);
        field.run(300);

        assertThat(before.consoleInSession()).isTrue();
        assertThat(field.standing()).isEqualTo(before);
    }

    @Test
    void noNonceOfThePayloadComesAgainInTenLivesWithAStuckRandomSource() {
        Field field = new Field(Field.KEY, Field.KEY, () -> 4L);
        for (int life = 0; life < 10; life++) {
            field.run(3_000);
            field.payload.cutPower();
            field.payload.restart(BootCause.WATCHDOG);
        }

        List<Challenge> challenges = said(field.down, Challenge.class);
        Set<Object> nonces =
                new HashSet<>(challenges.stream().map(Challenge::payloadNonce).toList());
        assertThat(nonces).hasSizeGreaterThanOrEqualTo(10).hasSize((int)
                challenges.stream().distinct().count());
    }

    /** A draw and a safe-all. */
    private static Field flown(Field field) {
        field.arm(Sampler.AIR);
        field.console.act(new Act.Trigger(Sampler.AIR));
        field.run(1_000);
        assertThat(field.payload.outputs()).isNotEqualTo(Outputs.OFF);
        field.console.act(new Act.SafeAll());
        field.run(1_000);
        return field;
    }

    /** Which sessions a payload named while frames were played to it, and whether anything was driven. */
    private record Play(Set<Long> sessions, boolean moved) {}

    private static Play play(List<Frame> recorded, SimulatedPayload payload) {
        Set<Long> sessions = new HashSet<>();
        boolean moved = false;
        for (int i = 0; i < recorded.size() + 200; i++) {
            if (i < recorded.size()) {
                payload.hear(recorded.get(i));
            }
            payload.step();
            moved |= !payload.outputs().equals(Outputs.OFF);
            said(payload.takeFrames(), Status.class).forEach(status -> sessions.add(status.session()));
        }
        return new Play(sessions, moved);
    }

    private static <M> List<M> said(List<Frame> frames, Class<M> type) {
        return frames.stream()
                .map(MessageCodec::decode)
                .filter(Decoded.Known.class::isInstance)
                .map(known -> ((Decoded.Known) known).message())
                .filter(type::isInstance)
                .map(type::cast)
                .toList();
    }
}
