package ouzel.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32C;
import ouzel.app.exit.Refusal;

/** Journals that this program did not write as they are: bodies with a right checksum, damage behind whole records. */
class JournalFuzzTest {
    private static final List<Entry> HONEST = Stimuli.run(5);

    @FuzzTest(maxDuration = "3m")
    void aRecordThatCanBeReadCanBeWrittenAndReadAgain(byte[] kindAndBody) throws IOException {
        ByteBuffer record = ByteBuffer.wrap(framed(kindAndBody)).order(ByteOrder.LITTLE_ENDIAN);

        if (JournalCodec.read(record) instanceof JournalCodec.Next.Whole whole) {
            byte[] again = JournalCodec.write(whole.entry());
            assertThat(JournalCodec.read(ByteBuffer.wrap(again).order(ByteOrder.LITTLE_ENDIAN)))
                    .isEqualTo(new JournalCodec.Next.Whole(whole.entry(), again.length));
        } else {
            assertThat(record.position()).isZero();
        }
    }

    @FuzzTest(maxDuration = "3m")
    void whatStandsBeforeTheDamageIsReadAndFoldedAndTheRestIsToldOf(byte[] damage) throws IOException, Refusal {
        Path file = Files.createTempFile("ouzel-fuzz", JournalFiles.SUFFIX);
        try {
            write(file, damage);
            List<Entry> read = new ArrayList<>();
            try (JournalReader reader = JournalReader.open(file)) {
                for (Optional<Entry> next = reader.next(); next.isPresent(); next = reader.next()) {
                    read.add(next.get());
                }
                assertThat(read).startsWith(HONEST.toArray(Entry[]::new));
                boolean allRead = read.size() > HONEST.size() || damage.length == 0;
                assertThat(reader.dropped().isPresent() || allRead).isTrue();
            }
            try (JournalReader reader = JournalReader.open(file)) {
                assertThat(PlaybackFold.fold(reader).records()).isEqualTo(read.size());
            }
        } finally {
            Files.delete(file);
        }
    }

    private static void write(Path file, byte[] damage) throws IOException, Refusal {
        JournalHeader header = new JournalHeader(Instant.EPOCH, true, "1");
        try (Recorder recorder =
                JournalFiles.reproducible(file, header, sentence -> {}).recorder()) {
            HONEST.forEach(entry -> recorder.append(entry.at(), entry.stimulus()));
        }
        Files.write(file, damage, StandardOpenOption.APPEND);
    }

    /** The first byte as the kind and the others as the body, at a moment of 0, with the checksum that fits. */
    private static byte[] framed(byte[] kindAndBody) {
        int length = 16 + Math.max(1, kindAndBody.length);
        ByteBuffer record = ByteBuffer.allocate(8 + length).order(ByteOrder.LITTLE_ENDIAN);
        record.putInt(0, length);
        if (kindAndBody.length > 0) {
            record.put(8, kindAndBody[0]).put(25, kindAndBody, 1, kindAndBody.length - 1);
        }
        CRC32C crc = new CRC32C();
        crc.update(record.array(), 0, 4);
        crc.update(record.array(), 8, length);
        return record.putInt(4, (int) crc.getValue()).array();
    }
}
