package ouzel.app.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import ouzel.app.exit.Refusal;
import ouzel.app.journal.JournalReader;
import ouzel.app.journal.PlaybackFold;

/** Opening the journal of a ten-hour sortie again, in a machine with 300 MB of heap and without a warm start. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 3, jvmArgsAppend = "-Xmx300m")
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class FoldBench {
    /** Where {@link Benches} puts the journal. */
    static final Path JOURNAL = Path.of(System.getProperty("java.io.tmpdir"), "ouzel-bench", "ten-hours.ouzel");

    /** The bytes alone. */
    @Benchmark
    public long peerRead() throws IOException {
        long sum = 0;
        try (var source = Files.newInputStream(JOURNAL)) {
            byte[] chunk = new byte[65_536];
            for (int read = source.read(chunk); read > 0; read = source.read(chunk)) {
                sum += chunk[read - 1];
            }
        }
        return sum;
    }

    /** Records read, proven and decoded, without the fold. */
    @Benchmark
    public long readRecords() throws Refusal, IOException {
        long records = 0;
        try (JournalReader reader = JournalReader.open(JOURNAL)) {
            while (reader.next().isPresent()) {
                records++;
            }
        }
        return records;
    }

    /** Read and folded to the desk's last state. */
    @Benchmark
    public PlaybackFold.Result fold() throws Refusal, IOException {
        try (JournalReader reader = JournalReader.open(JOURNAL)) {
            return PlaybackFold.fold(reader);
        }
    }
}
