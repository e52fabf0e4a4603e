package ouzel.app.bench;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.message.CurrentTrace;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Status;

/** What a payload says while a pump runs: statuses and traces of ten samples, turn about. */
final class Telemetry {
    private static final Readings READINGS = new Readings(12_000, 300, 11, 5, 7, 184, 10_130, 0, 450, 9, 8, 0x411);

    private Telemetry() {}

    /** {@code count} messages. */
    static List<Downlink> messages(int count) {
        List<Downlink> messages = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            messages.add(i % 2 == 0 ? status(i) : trace(i));
        }
        return messages;
    }

    /** The same as frames. */
    static List<Frame> frames(int count) {
        List<Frame> frames = new ArrayList<>();
        for (Downlink message : messages(count)) {
            frames.add(MessageCodec.encode(message, 7, frames.size() & 0xFFFF, frames.size() * 50L));
        }
        return frames;
    }

    /** The same as bytes on the line. */
    static byte[] line(int count) {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        frames(count).forEach(frame -> line.writeBytes(FrameEncoder.encode(frame)));
        return line.toByteArray();
    }

    /** A status that names {@code session}, as a frame. */
    static Frame statusOf(long session) {
        List<SamplerState> states = List.of(SamplerState.SAFE, SamplerState.SAFE, SamplerState.SAFE);
        return MessageCodec.encode(new Status(session, states, 0, 0, 0, 0, 0, 0, 0, 0, 1, READINGS), 7, 2, 2);
    }

    private static Status status(int i) {
        List<SamplerState> states = List.of(SamplerState.SAFE, SamplerState.ARMED, SamplerState.SAFE);
        return new Status(0x1234_5678L, states, 9_000, 0x1F_FFFF, 30 + i, 0, 0, 120, i, 3, 4, READINGS);
    }

    private static CurrentTrace trace(int i) {
        return new CurrentTrace(
                Sampler.AIR,
                i * 10L,
                IntStream.range(0, 10).map(n -> 400 + n).boxed().toList());
    }
}
