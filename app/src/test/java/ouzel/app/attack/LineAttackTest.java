package ouzel.app.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ouzel.app.attack.Field.Standing;
import ouzel.app.desk.Act;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Open;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.simulator.plant.Outputs;

/** Frames with a right checksum from somebody without the key: forged, changed, turned back, held back, repeated. */
class LineAttackTest {
    private final Field field = Field.inSession();

    @ParameterizedTest
    @EnumSource(value = Kind.class, names = "OPEN", mode = EnumSource.Mode.EXCLUDE)
    void aForgedFrameOfAnyKindIsRefusedCountedAndChangesNothing(Kind kind) {
        Standing before = field.standing();
        byte[] body = new byte[60];
        new Random(kind.code()).nextBytes(body);

        field.payload.hear(new Frame(new Header(Header.VERSION, kind.code(), 7, 1, 5_000), Bytes.of(body)));
        field.run(300);

        assertThat(field.standing()).isEqualTo(before);
        assertThat(field.status().refusedFrames()).isEqualTo(1);
    }

    @Test
    void aTriggerChangedInAnyBitStartsNothingAndTheUnchangedOneDoes() {
        field.arm(Sampler.AIR);
        Frame trigger = field.heldTrigger(Sampler.AIR);

        for (int bit = 0; bit < trigger.body().length() * 8; bit++) {
            byte[] body = trigger.body().toArray();
            body[bit / 8] ^= (byte) (1 << bit % 8);
            field.payload.hear(new Frame(trigger.header(), Bytes.of(body)));
            assertThat(field.payload.outputs()).as("bit %d", bit).isEqualTo(Outputs.OFF);
        }
        field.payload.hear(trigger);

        assertThat(field.payload.outputs()).isNotEqualTo(Outputs.OFF);
    }

    @Test
    void aTriggerUnderAnyOtherHeaderStartsNothing() {
        field.arm(Sampler.AIR);
        Frame trigger = field.heldTrigger(Sampler.AIR);
        Header right = trigger.header();

        for (int kind = 0; kind <= 0xFF; kind++) {
            if (kind != right.kind()) {
                field.payload.hear(new Frame(
                        new Header(right.version(), kind, 7, right.sequence(), right.timeMillis()), trigger.body()));
            }
        }
        for (int other = 1; other < 100; other++) {
            field.payload.hear(new Frame(
                    new Header(right.version(), right.kind(), 7, right.sequence() + other, right.timeMillis()),
                    trigger.body()));
        }

        assertThat(field.payload.outputs()).isEqualTo(Outputs.OFF);
        assertThat(field.standing().states()).contains(SamplerState.ARMED);
    }

    @Test
    void aTriggerCutAnywhereOrLengthenedStartsNothing() {
        field.arm(Sampler.AIR);
        Frame trigger = field.heldTrigger(Sampler.AIR);

        for (int length = 0; length <= 200; length++) {
            if (length != trigger.body().length()) {
                field.payload.hear(new Frame(
                        trigger.header(), Bytes.of(Arrays.copyOf(trigger.body().toArray(), length))));
            }
        }

        assertThat(field.payload.outputs()).isEqualTo(Outputs.OFF);
    }

    @Test
    void framesTurnedBackToWhereTheyCameFromChangeNothing() {
        field.arm(Sampler.AIR);
        field.console.act(new Act.Stop(Sampler.AIR));
        field.run(500);
        Standing before = field.standing();
        List<Frame> up = List.copyOf(field.up);

        List.copyOf(field.down).forEach(field.payload::hear);
        up.forEach(field.console::heard);

        field.run(300);
        assertThat(field.standing()).isEqualTo(before);
        assertThat(field.notes()).anyMatch(note -> note.contains("an echo, or another console"));
    }

    @Test
    void aTriggerHeldBackUntilTheSamplerWasDisarmedStartsNothing() {
        field.arm(Sampler.AIR);
        Frame trigger = field.heldTrigger(Sampler.AIR);
        field.console.act(new Act.Stop(Sampler.AIR));
        field.run(200);

        field.payload.hear(trigger);

        assertThat(field.payload.outputs()).isEqualTo(Outputs.OFF);
    }

    @Test
    void aSessionPlayedBackwardsOrShuffledStartsNothingThatDidNotStart() {
        field.arm(Sampler.AIR);
        field.console.act(new Act.Trigger(Sampler.AIR));
        field.run(1_000);
        field.console.act(new Act.SafeAll());
        field.run(1_000);
        Standing before = field.standing();
        List<Frame> recorded = new java.util.ArrayList<>(field.up);

        for (int i = 0; i < 20; i++) {
            Collections.shuffle(recorded, new Random(i));
            recorded.forEach(field.payload::hear);
        }
        field.run(300);

        assertThat(before.pumpOnMillis()).isPositive();
        assertThat(field.standing()).isEqualTo(before);
    }

    @Test
    void aFloodOfOpensDoesNotEndTheSessionOrDelayAnOrder() {
        Standing before = field.standing();
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 20_000; i++) {
            byte[] nonce = new byte[16];
            random.nextBytes(nonce);
            field.payload.hear(MessageCodec.encode(new Open(Bytes.of(nonce)), 0, i & 0xFFFF, 1));
        }
        field.payload.takeFrames();

        field.run(300);
        assertThat(field.standing()).isEqualTo(before);
        field.arm(Sampler.AIR);
        assertThat(field.status().state(Sampler.AIR)).isEqualTo(SamplerState.ARMED);
    }
}
