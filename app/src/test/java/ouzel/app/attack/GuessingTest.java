package ouzel.app.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;

/** A million tries to guess a tag, against an armed payload, over the bytes of its line. */
class GuessingTest {
    private static final int TRIES = 1_000_000;
    private static final Kind[] ORDERS = {Kind.TRIGGER, Kind.STOP, Kind.SAFE_ALL, Kind.ARM, Kind.CONFIRM};

    @Test
    void aMillionHostileFramesAreAllRefusedAndChangeNothing() {
        Field field = Field.inSession();
        field.arm(Sampler.AIR);
        Field.Standing before = field.standing();
        SplittableRandom random = new SplittableRandom(2026);

        for (int i = 0; i < TRIES; i++) {
            field.payload.hear(FrameEncoder.encode(guess(random, i)));
        }
        field.run(200);

        assertThat(field.standing()).isEqualTo(before);
        assertThat(field.status().state(Sampler.AIR)).isEqualTo(SamplerState.ARMED);
        assertThat(field.status().refusedFrames()).isEqualTo(0xFFFF);
    }

    /** Everything right but the tag: address, kind, length, a plausible counter and expiry. */
    private static Frame guess(SplittableRandom random, int i) {
        Kind kind = ORDERS[i % ORDERS.length];
        byte[] body = new byte[28 + (kind == Kind.TRIGGER ? 9 : kind == Kind.ARM ? 7 : kind == Kind.STOP ? 1 : 0)];
        random.nextBytes(body);
        body[1] = 0;
        body[2] = 0;
        body[3] = 0;
        return new Frame(new Header(Header.VERSION, kind.code(), 7, i & 0xFFFF, 5_000), Bytes.of(body));
    }
}
