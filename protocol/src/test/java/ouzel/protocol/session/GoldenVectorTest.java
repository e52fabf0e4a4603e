package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ouzel.protocol.codec.Decoded;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.frame.FrameParser;
import ouzel.protocol.message.Bytes;

/** The frames in {@code protocol/vectors}, which another program in another language made from the paper. */
class GoldenVectorTest {
    private static final Vector KEYS = Vector.keys();
    private static final int PAYLOAD = (int) KEYS.number("payload");
    private static final PairingKey PAIRING = PairingKey.of(KEYS.bytes("pairing"));
    private static final Bytes CONSOLE_NONCE = Bytes.of(KEYS.bytes("consoleNonce"));
    private static final Bytes PAYLOAD_NONCE = Bytes.of(KEYS.bytes("payloadNonce"));
    private static final SessionKey KEY = SessionKey.derive(PAIRING, CONSOLE_NONCE, PAYLOAD_NONCE, PAYLOAD);

    static Stream<Vector> frames() {
        return Vector.frames();
    }

    @Test
    void thereIsOneForEveryKind() {
        Set<Kind> kinds =
                Vector.frames().map(Vector::kind).collect(Collectors.toCollection(() -> EnumSet.noneOf(Kind.class)));

        assertThat(kinds).containsExactlyInAnyOrder(Kind.values());
    }

    @ParameterizedTest
    @MethodSource("frames")
    void theNamedValuesMakeTheLine(Vector vector) {
        Frame frame = vector.envelope()
                .map(envelope -> Seal.close(
                        KEY,
                        envelope,
                        vector.header().payload(),
                        vector.header().sequence(),
                        vector.header().timeMillis()))
                .orElseGet(() -> MessageCodec.encode(
                        vector.message(),
                        vector.header().payload(),
                        vector.header().sequence(),
                        vector.header().timeMillis()));

        assertThat(hex(FrameEncoder.encode(frame))).isEqualTo(hex(vector.line()));
    }

    @ParameterizedTest
    @MethodSource("frames")
    void theLineGivesTheNamedValues(Vector vector) {
        Frame frame = parse(vector.line());

        assertThat(frame.header()).isEqualTo(vector.header());
        if (vector.kind().isOrder()) {
            assertThat(Seal.isTrue(KEY, frame)).isTrue();
            assertThat(Seal.order(frame)).isEqualTo(new Decoded.Known(vector.message()));
        } else {
            assertThat(MessageCodec.decode(frame)).isEqualTo(new Decoded.Known(vector.message()));
        }
    }

    @ParameterizedTest
    @MethodSource("frames")
    void everySingleFlippedBitOfTheLineIsRefused(Vector vector) {
        byte[] line = vector.line();

        for (int bit = 8; bit < (line.length - 1) * 8; bit++) {
            byte[] wrong = line.clone();
            wrong[bit / 8] ^= (byte) (1 << bit % 8);
            List<Frame> frames = new ArrayList<>();
            new FrameParser().feed(wrong, frames::add);
            assertThat(frames).as("bit %d of %s", bit, vector).isEmpty();
        }
    }

    @Test
    void theSessionHasTheKeysOnPaper() {
        byte[] salt = new byte[32];
        System.arraycopy(CONSOLE_NONCE.toArray(), 0, salt, 0, 16);
        System.arraycopy(PAYLOAD_NONCE.toArray(), 0, salt, 16, 16);
        byte[] extracted = Hmac.extract(salt, KEYS.bytes("pairing"));
        byte[] expanded = Hmac.expand(extracted, KEYS.bytes("info"), 68);

        assertThat(hex(extracted)).isEqualTo(hex(KEYS.bytes("extracted")));
        assertThat(hex(Arrays.copyOf(expanded, 32))).isEqualTo(hex(KEYS.bytes("orderKey")));
        assertThat(hex(Arrays.copyOfRange(expanded, 32, 64))).isEqualTo(hex(KEYS.bytes("proofKey")));
        assertThat(KEY.number()).isEqualTo(KEYS.number("session"));
    }

    /** The whole opening, driven by a console and a payload that know nothing of the file but key and nonces. */
    @Test
    void theOpeningHappensFrameByFrameAsOnPaper() {
        ConsoleSession console = new ConsoleSession(PAIRING, () -> CONSOLE_NONCE, PAYLOAD);
        PayloadSession payload = new PayloadSession(PAIRING, PAYLOAD, () -> PAYLOAD_NONCE);

        Frame open = says(console, 1_000, "open");
        assertThat(payload.hear(open)).isEqualTo(new Verdict.Reply((ouzel.protocol.message.Downlink)
                Vector.named("challenge").message()));
        console.hear(parse(Vector.named("challenge").line()), nanos(1_080));
        assertThat(payload.hear(says(console, 1_100, "confirm"))).isEqualTo(new Verdict.Opened(KEY.number()));
        assertThat(console.hear(parse(Vector.named("status-in-session").line()), nanos(1_200)))
                .contains(new Heard.Opened(PAYLOAD, KEY.number()));
        assertThat(payload.hear(says(console, 1_200, "keep-alive")))
                .isEqualTo(new Verdict.Verified(
                        Vector.named("keep-alive").envelope().orElseThrow()));
    }

    private static Frame says(ConsoleSession console, long nowMillis, String vector) {
        Frame frame = console.tick(nanos(nowMillis)).get(0);
        assertThat(hex(FrameEncoder.encode(frame)))
                .as(vector)
                .isEqualTo(hex(Vector.named(vector).line()));
        return frame;
    }

    private static long nanos(long millis) {
        return millis * 1_000_000;
    }

    private static Frame parse(byte[] line) {
        List<Frame> frames = new ArrayList<>();
        new FrameParser().feed(line, frames::add);
        assertThat(frames).hasSize(1);
        return frames.get(0);
    }

    private static String hex(byte[] bytes) {
        return HexFormat.ofDelimiter(" ").formatHex(bytes);
    }
}
