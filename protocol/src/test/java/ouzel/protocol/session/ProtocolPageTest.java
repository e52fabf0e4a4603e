package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.message.AcknowledgeEvents;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.CurrentTrace;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.KeepAlive;
import ouzel.protocol.message.Message;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Trigger;
import ouzel.protocol.message.ValveWaveform;

/** Holds PROTOCOL.md to the program: what the page shows must be what is sent. */
class ProtocolPageTest {
    private static final String PAGE = read();
    private static final double LINE_BYTES_PER_SECOND = 57_600 / 10.0;

    /** One line of the bandwidth table. */
    private record Load(String name, int bytes, double perSecond, boolean atOnce) {
        double bytesPerSecond() {
            return bytes * perSecond;
        }

        String row() {
            String title = name + (atOnce ? " †" : "");
            return String.format(
                    Locale.ROOT,
                    "| %s | %d | %.1f | %.1f | %.1f %% |",
                    title,
                    bytes,
                    perSecond,
                    bytesPerSecond(),
                    100 * bytesPerSecond() / LINE_BYTES_PER_SECOND);
        }
    }

    static Stream<Vector> frames() {
        return Vector.frames();
    }

    static Stream<Load> loads() {
        return Stream.of(
                new Load("STATUS", length("status-drawing"), 10, true),
                new Load("IDENTITY", length(new Identity("x".repeat(24), 0, 0, 0, true)), 0.5, true),
                new Load("CURRENT_TRACE", length(new CurrentTrace(Sampler.AIR, 0, samples(10))), 10, true),
                new Load("EVENT", length("event-draw-completed"), 20, true),
                new Load("OUTCOME", length(Outcome.of(1, Outcome.Stage.PROGRESS)), 2, true),
                new Load("KEEP_ALIVE", length(new KeepAlive()), 5, true),
                new Load("TRIGGER", length(new Trigger(Sampler.SOIL, 1)), 2.5, true),
                new Load("ACKNOWLEDGE_EVENTS", length(new AcknowledgeEvents(1)), 2, true),
                new Load("VALVE_WAVEFORM", length(new ValveWaveform(Sampler.SOIL, 0, 200, 0, samples(100))), 2, false),
                new Load("SETTINGS", length("settings"), 1, false),
                new Load("ARM", length(new Arm(Sampler.SOIL, 1, 0)), 2.5, false),
                new Load("SAFE_ALL", length(new SafeAll()), 5, false));
    }

    @ParameterizedTest
    @MethodSource("frames")
    void showsEveryExampleFrame(Vector vector) {
        assertThat(PAGE).contains("Example `" + vector.name() + "`");
        assertThat(PAGE.replaceAll("\\s+", " "))
                .contains(HexFormat.ofDelimiter(" ").formatHex(vector.line()));
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void hasOneHeadingForEveryKind(Kind kind) {
        assertThat(PAGE).containsOnlyOnce(String.format("#### 0x%02X %s\n", kind.code(), kind.name()));
    }

    @Test
    void listsEveryReasonAndEveryPermissiveUnderItsCode() {
        assertThat(Reason.values())
                .allSatisfy(
                        reason -> assertThat(PAGE).contains("\n| " + reason.code() + " | " + reason.name() + " | "));
        assertThat(Permissive.values())
                .allSatisfy(permissive ->
                        assertThat(PAGE).contains("\n| " + permissive.code() + " | " + permissive.name() + " | "));
    }

    @ParameterizedTest
    @MethodSource("loads")
    void theBandwidthTableIsTheCodecsOwn(Load load) {
        assertThat(PAGE).contains(load.row());
    }

    @Test
    void allThatRunsAtOnceFitsInHalfOfTheLine() {
        double sum =
                loads().filter(Load::atOnce).mapToDouble(Load::bytesPerSecond).sum();

        assertThat(sum).isLessThan(LINE_BYTES_PER_SECOND / 2);
        assertThat(PAGE)
                .contains(String.format(
                        Locale.ROOT,
                        "| **sum of †** | | | **%.1f** | **%.1f %%** |",
                        sum,
                        100 * sum / LINE_BYTES_PER_SECOND));
    }

    @Test
    void namesTheTimesThatTheSessionKeeps() {
        assertThat(ConsoleSession.RETRY_NANOS).isEqualTo(400_000_000);
        assertThat(ConsoleSession.KEEP_ALIVE_NANOS).isEqualTo(200_000_000);
        assertThat(PAGE)
                .contains("OPEN every 400 ms", "CONFIRM every 400 ms", "KEEP_ALIVE every 200 ms")
                .contains("| KEEP_ALIVE | "
                        + String.format("%,d", ConsoleSession.KEEP_ALIVE_LIFE_MILLIS)
                                .replace(',', ' ') + " ms |");
    }

    private static int length(String vector) {
        return Vector.named(vector).line().length;
    }

    private static int length(Message message) {
        if (message instanceof Order order) {
            Vector keys = Vector.keys();
            SessionKey key = SessionKey.derive(
                    PairingKey.of(keys.bytes("pairing")),
                    ouzel.protocol.message.Bytes.of(keys.bytes("consoleNonce")),
                    ouzel.protocol.message.Bytes.of(keys.bytes("payloadNonce")),
                    7);
            return FrameEncoder.encode(Seal.close(key, new Envelope(1, 1, 1, order), 7, 0, 0)).length;
        }
        Frame frame = MessageCodec.encode(message, 7, 0, 0);
        return FrameEncoder.encode(frame).length;
    }

    private static List<Integer> samples(int count) {
        return Collections.nCopies(count, 1_000);
    }

    private static String read() {
        try {
            return Files.readString(Path.of("PROTOCOL.md"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
