package ouzel.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ouzel.app.exit.Refusal;

class JournalReaderTest {
    private static final JournalHeader HEADER = new JournalHeader(Instant.parse("2026-05-04T07:30:00Z"), true, "0.1.0");

    @TempDir
    Path directory;

    /** What a whole reading gave. */
    private record Read(List<Entry> entries, Optional<Dropped> dropped) {}

    @Test
    void tellsWhenTheFileWasMadeByWhichVersionAndWhetherItIsARehearsal() throws Exception {
        try (JournalReader reader = JournalReader.open(file(HEADER.write()))) {
            assertThat(reader.header()).isEqualTo(HEADER);
            assertThat(reader.next()).isEmpty();
            assertThat(reader.dropped()).isEmpty();
        }
    }

    @Test
    void aFileCutAnywhereOpensUpToItsLastWholeRecord() throws Exception {
        List<Entry> entries = Stimuli.run(4);
        byte[] whole = journal(entries);

        for (int length = HEADER.write().length; length < whole.length; length++) {
            Read read = readAll(file(Arrays.copyOf(whole, length)));
            assertThat(read.entries())
                    .isEqualTo(entries.subList(0, read.entries().size()));
            long kept = journal(read.entries()).length;
            assertThat(length - kept)
                    .isLessThan(JournalCodec.write(entries.get(read.entries().size())).length);
            assertThat(read.dropped().map(Dropped::bytes).orElse(0L)).isEqualTo(length - kept);
        }
    }

    @Test
    void aFileCutWithinItsHeaderIsRefusedWithASentence() throws Exception {
        byte[] header = HEADER.write();

        for (int length = 0; length < header.length; length++) {
            Path cut = file(Arrays.copyOf(header, length));
            assertThatThrownBy(() -> JournalReader.open(cut)).isInstanceOf(Refusal.class);
        }
    }

    @Test
    void anyFlippedBitOfTheHeaderIsFoundOut() throws Exception {
        byte[] header = HEADER.write();

        for (int bit = 0; bit < header.length * 8; bit++) {
            byte[] flipped = header.clone();
            flipped[bit / 8] ^= (byte) (1 << bit % 8);
            Path damaged = file(flipped);
            assertThatThrownBy(() -> JournalReader.open(damaged))
                    .as("bit %d", bit)
                    .isInstanceOf(Refusal.class);
        }
    }

    @Test
    void nothingBehindADamagedRecordIsUsed() throws Exception {
        List<Entry> entries = Stimuli.run(6);
        byte[] bytes = journal(entries);
        int third = journal(entries.subList(0, 2)).length;
        bytes[third + 12] ^= 0x10;

        Read read = readAll(file(bytes));

        assertThat(read.entries()).isEqualTo(entries.subList(0, 2));
        assertThat(read.dropped()).contains(new Dropped(third, bytes.length - third, "a checksum that does not fit"));
        assertThat(read.dropped().orElseThrow().sentence()).contains("from byte " + third);
    }

    @Test
    void zerosLeftBehindByACrashAreDropped() throws Exception {
        List<Entry> entries = Stimuli.run(3);
        byte[] bytes = journal(entries);

        Read read = readAll(file(Arrays.copyOf(bytes, bytes.length + 4_096)));

        assertThat(read.entries()).isEqualTo(entries);
        assertThat(read.dropped().orElseThrow().bytes()).isEqualTo(4_096);
    }

    @Test
    void aFileThatIsNoJournalIsRefusedByName() throws Exception {
        Path other = file("sample,sampler\n".getBytes());

        assertThatThrownBy(() -> JournalReader.open(other)).hasMessage(other + " is not a journal of this program.");
    }

    @Test
    void aNewerFormatIsRefusedWithBothNumbers() throws Exception {
        byte[] newer = HEADER.write();
        newer[8] = 2;
        Path file = file(newer);

        assertThatThrownBy(() -> JournalReader.open(file))
                .hasMessageContaining("journal format 2, this program reads up to format 1");
    }

    @Test
    void aFileThatIsNotThereIsRefusedWithASentence() {
        Path missing = directory.resolve("missing.ouzel");

        assertThatThrownBy(() -> JournalReader.open(missing))
                .hasMessage("The journal " + missing + " cannot be read: it is not there.");
    }

    @Test
    void aHundredThousandRecordsAreReadThroughAWindowOfFixedSize() throws Exception {
        Path file = directory.resolve("long.ouzel");
        try (OutputStream target = Files.newOutputStream(file)) {
            target.write(HEADER.write());
            byte[] thousand = records(Stimuli.run(1_000));
            for (int i = 0; i < 100; i++) {
                target.write(thousand);
            }
        }

        try (JournalReader reader = JournalReader.open(file)) {
            int window = reader.windowLength();
            int count = 0;
            while (reader.next().isPresent()) {
                count++;
            }
            assertThat(count).isEqualTo(100_000);
            assertThat(reader.windowLength()).isEqualTo(window).isLessThan((int) (Files.size(file) / 20));
        }
    }

    private Path file(byte[] bytes) throws IOException {
        return Files.write(directory.resolve("sortie.ouzel"), bytes);
    }

    private static byte[] journal(List<Entry> entries) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(HEADER.write());
        bytes.write(records(entries));
        return bytes.toByteArray();
    }

    private static byte[] records(List<Entry> entries) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (Entry entry : entries) {
            bytes.write(JournalCodec.write(entry));
        }
        return bytes.toByteArray();
    }

    private static Read readAll(Path file) throws Exception {
        try (JournalReader reader = JournalReader.open(file)) {
            List<Entry> entries = new ArrayList<>();
            for (Optional<Entry> next = reader.next(); next.isPresent(); next = reader.next()) {
                entries.add(next.get());
            }
            return new Read(entries, reader.dropped());
        }
    }
}
