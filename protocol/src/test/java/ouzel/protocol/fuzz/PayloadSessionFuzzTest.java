package ouzel.protocol.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.session.Verdict;

/** Somebody between the ends who delays, repeats, changes and invents frames on their way up. */
class PayloadSessionFuzzTest {
    private static final int MOST_STEPS = 200;

    @FuzzTest(maxDuration = "3m")
    void onlyWhatTheConsoleSealedIsVerifiedAndEachFrameOnce(FuzzedDataProvider chance) {
        Ends ends = new Ends().open();
        long session = ends.payload.session();
        List<Frame> sealed = new ArrayList<>();
        Set<Frame> obeyed = new HashSet<>();

        for (int i = 0; i < MOST_STEPS && chance.remainingBytes() > 0; i++) {
            Frame frame = next(chance, ends, sealed);
            if (ends.payload.hear(frame) instanceof Verdict.Verified) {
                assertThat(sealed).contains(frame);
                assertThat(obeyed.add(frame)).isTrue();
            }
            assertThat(ends.payload.session()).isEqualTo(session);
        }

        assertThat(ends.payload.hear(seal(ends))).isInstanceOf(Verdict.Verified.class);
    }

    private static Frame next(FuzzedDataProvider chance, Ends ends, List<Frame> sealed) {
        return switch (chance.consumeInt(0, 3)) {
            case 0 -> {
                Frame frame = seal(ends);
                sealed.add(frame);
                yield frame;
            }
            case 1 -> sealed.isEmpty() ? invented(chance) : chance.pickValue(sealed);
            case 2 -> sealed.isEmpty() ? invented(chance) : changed(chance, chance.pickValue(sealed));
            default -> invented(chance);
        };
    }

    private static Frame seal(Ends ends) {
        boolean even = ends.nowNanos / 1_000_000 % 2 == 0;
        ends.pass(1);
        return ends.console.seal(even ? new SafeAll() : new Arm(Sampler.AIR, 600, 0), 9, 1_500, ends.nowNanos);
    }

    private static Frame changed(FuzzedDataProvider chance, Frame frame) {
        byte[] body = frame.body().toArray();
        body[chance.consumeInt(0, body.length - 1)] ^= chance.consumeByte();
        Header header = frame.header();
        int kind = chance.consumeBoolean() ? header.kind() : chance.consumeInt(0, 0xFF);
        return new Frame(
                new Header(header.version(), kind, header.payload(), header.sequence(), header.timeMillis()),
                Bytes.of(body));
    }

    private static Frame invented(FuzzedDataProvider chance) {
        int payload = chance.consumeBoolean() ? Ends.PAYLOAD : chance.consumeInt(0, 0xFFFF);
        int version = chance.consumeBoolean() ? Header.VERSION : chance.consumeInt(0, 0xFF);
        Header header = new Header(version, chance.consumeInt(0, 0xFF), payload, chance.consumeInt(0, 0xFFFF), 0);
        return new Frame(header, Bytes.of(chance.consumeBytes(chance.consumeInt(0, Frame.LONGEST_BODY))));
    }
}
