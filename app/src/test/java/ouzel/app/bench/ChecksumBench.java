package ouzel.app.bench;

import java.util.concurrent.TimeUnit;
import java.util.zip.CRC32C;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import ouzel.protocol.frame.Crc16;

/** The frame checksum over a longest frame, beside the platform's CRC-32C, which the processor computes by itself. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 6, time = 500, timeUnit = TimeUnit.MILLISECONDS)
@Measurement(iterations = 20, time = 200, timeUnit = TimeUnit.MILLISECONDS)
public class ChecksumBench {
    private final byte[] frame = new byte[238];

    /** CRC-32C in hardware. */
    @Benchmark
    public long peerCrc32c() {
        CRC32C crc = new CRC32C();
        crc.update(frame);
        return crc.getValue();
    }

    /** CRC-16/IBM-3740 by table. */
    @Benchmark
    public int crc16() {
        return Crc16.of(frame);
    }
}
