package ouzel.protocol.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.KeepAlive;
import ouzel.protocol.session.Heard;
import ouzel.protocol.session.Verdict;

/** Somebody who says things to the console that no payload said, before and after its session is open. */
class ConsoleSessionFuzzTest {
    private static final int MOST_STEPS = 200;

    @FuzzTest(maxDuration = "3m")
    void nothingInventedMakesItThrowOpenOrRepeatACounter(FuzzedDataProvider chance) {
        Ends ends = new Ends();
        for (int i = 0; i < MOST_STEPS && chance.remainingBytes() > 0; i++) {
            ends.pass(chance.consumeInt(0, 500));
            List<Heard> heard = ends.console.hear(invented(chance), ends.nowNanos);
            assertThat(heard).noneMatch(Heard.Opened.class::isInstance);
            assertThat(ends.console.tick(ends.nowNanos)).hasSizeLessThanOrEqualTo(1);
            assertThat(ends.console.isOpen()).isFalse();
        }
    }

    @FuzzTest(maxDuration = "3m")
    void whateverIsSaidInASessionEveryFrameItSealsIsNewToThePayload(FuzzedDataProvider chance) {
        Ends ends = new Ends().open();
        for (int i = 0; i < MOST_STEPS && chance.remainingBytes() > 0 && ends.console.isOpen(); i++) {
            ends.pass(chance.consumeInt(0, 300));
            ends.console.hear(invented(chance), ends.nowNanos);
            if (ends.console.isOpen()) {
                Frame frame = ends.console.seal(new KeepAlive(), 0, 1_000, ends.nowNanos);
                assertThat(ends.payload.hear(frame)).isInstanceOf(Verdict.Verified.class);
            }
        }
    }

    private static Frame invented(FuzzedDataProvider chance) {
        int payload = chance.consumeInt(0, 3) > 0 ? Ends.PAYLOAD : chance.consumeInt(0, 0xFFFF);
        int kind = chance.consumeBoolean() ? chance.pickValue(Kind.values()).code() : chance.consumeInt(0, 0xFF);
        long time = chance.consumeLong(0, 0xFFFF_FFFFL);
        Header header = new Header(Header.VERSION, kind, payload, chance.consumeInt(0, 0xFFFF), time);
        return new Frame(header, Bytes.of(chance.consumeBytes(chance.consumeInt(0, Frame.LONGEST_BODY))));
    }
}
