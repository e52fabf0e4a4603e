package ouzel.app.bench;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.message.Downlink;

/** From messages to bytes, per frame. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 6, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 20, time = 200, timeUnit = TimeUnit.MILLISECONDS)
public class EncodeBench {
    static final int FRAMES = 1_000;

    private final List<Downlink> messages = Telemetry.messages(FRAMES);
    private final byte[][] lines =
            Telemetry.frames(FRAMES).stream().map(FrameEncoder::encode).toArray(byte[][]::new);

    /** The least that a frame of its own array can cost. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public void peerCopy(Blackhole hole) {
        for (byte[] line : lines) {
            hole.consume(Arrays.copyOf(line, line.length));
        }
    }

    /** Layout, checksum and stuffing. */
    @Benchmark
    @OperationsPerInvocation(FRAMES)
    public void fromMessages(Blackhole hole) {
        int sequence = 0;
        for (Downlink message : messages) {
            hole.consume(FrameEncoder.encode(MessageCodec.encode(message, 7, sequence++, 1)));
        }
    }
}
