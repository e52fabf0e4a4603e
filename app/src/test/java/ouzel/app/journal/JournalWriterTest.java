package ouzel.app.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;

@Timeout(20)
class JournalWriterTest {
    private static final Entry TICK = new Entry(new Moment(1, 2), new Stimulus.Ticked());
    private static final int TICK_LENGTH = 25;

    private final FakeStore disk = new FakeStore(100_000);
    private final List<String> told = Collections.synchronizedList(new ArrayList<>());

    @Test
    void whatWasAppendedIsOnTheDiskInItsOrderAfterClose() throws IOException {
        List<Entry> entries = Stimuli.run(100);

        JournalWriter writer = writer(disk);
        entries.forEach(entry -> writer.append(entry.at(), entry.stimulus()));
        writer.close();

        assertThat(disk.written()).isEqualTo(records(entries));
        assertThat(disk.forced()).isEqualTo(disk.written().length);
        assertThat(disk.calls())
                .endsWith("force", "close")
                .filteredOn("close"::equals)
                .hasSize(1);
        assertThat(told).isEmpty();
    }

    @Test
    void nothingIsSentBeforeAllThatLedToItIsForcedToTheDisk() {
        JournalWriter writer = writer(disk);
        writer.append(TICK.at(), TICK.stimulus());
        writer.whenDurable(() -> disk.note("send after " + disk.forced()), disk::note);
        writer.close();

        assertThat(disk.calls()).containsSubsequence("write 25", "force", "send after 25");
    }

    @Test
    void manyQuestionsThatGatheredWhileTheDiskWasBusyAreAnsweredByOneForce() {
        CountDownLatch still = disk.standStill();
        JournalWriter writer = writer(disk);
        for (int i = 0; i < 50; i++) {
            writer.append(TICK.at(), TICK.stimulus());
            writer.whenDurable(() -> told.add("sent"), told::add);
        }
        still.countDown();
        writer.close();

        assertThat(told).hasSize(50).containsOnly("sent");
        assertThat(disk.calls()).filteredOn("force"::equals).hasSizeLessThanOrEqualTo(3);
    }

    @Test
    void aDiskThatStandsStillNeverHoldsUpTheDeskAndIsToldOnce() {
        CountDownLatch still = disk.standStill();
        JournalWriter writer = writer(disk);
        for (int i = 0; i < JournalWriter.QUEUE_LENGTH + 2_000; i++) {
            writer.append(TICK.at(), TICK.stimulus());
        }
        writer.whenDurable(() -> told.add("sent"), sentence -> told.add("not sent"));

        assertThat(told).hasSize(2).endsWith("not sent").first().asString().contains("stands still");
        still.countDown();
        writer.close();
        assertThat(told).hasSize(2);
    }

    @Test
    void aFullDiskIsToldOnceInASentenceAndNothingIsSentAnyMore() {
        FakeStore full = new FakeStore(3 * TICK_LENGTH);
        JournalWriter writer = writer(full);
        for (int i = 0; i < 6; i++) {
            writer.append(TICK.at(), TICK.stimulus());
            writer.whenDurable(() -> full.note("sent"), sentence -> full.note("not sent"));
        }
        writer.close();

        long sent = full.calls().stream().filter("sent"::equals).count();
        assertThat(sent * TICK_LENGTH).isLessThanOrEqualTo(full.forced());
        assertThat(full.calls()).filteredOn("not sent"::equals).hasSize(6 - (int) sent);
        assertThat(told)
                .containsExactly("The journal /disk/sortie.ouzel cannot be written: No space left on device."
                        + " Free disk space or mend the directory, then open the desk again.");
    }

    @Test
    void whatWasWrittenBeforeTheDiskWasFullIsWholeRecords() {
        FakeStore full = new FakeStore(1_000);
        JournalWriter writer = writer(full);
        Stimuli.run(200).forEach(entry -> writer.append(entry.at(), entry.stimulus()));
        writer.close();

        assertThat(told).hasSize(1);
        assertThat(full.written()).isEqualTo(recordsWithin(full.written().length));
    }

    @Test
    void afterCloseNothingIsWrittenAndEveryQuestionIsAnswered() {
        JournalWriter writer = writer(disk);
        writer.close();
        writer.close();
        writer.append(TICK.at(), TICK.stimulus());
        writer.whenDurable(() -> told.add("sent"), told::add);

        assertThat(told).containsExactly("The journal is closed.");
        assertThat(disk.written()).isEmpty();
    }

    @Test
    void withoutAnyQuestionItIsStillForcedWithinAboutASecond() {
        JournalWriter writer = writer(disk);
        writer.append(TICK.at(), TICK.stimulus());

        await().until(() -> disk.forced() == TICK_LENGTH);
        writer.close();
    }

    @Test
    void eachAppendWritesItsOwnRecordAndNothingElseHoweverLongTheJournalIs() {
        FakeStore large = new FakeStore(Integer.MAX_VALUE);
        Recorder recorder = new DirectRecorder(large, told::add);
        for (int i = 0; i < 20_000; i++) {
            recorder.append(TICK.at(), TICK.stimulus());
        }
        recorder.close();

        assertThat(large.written()).hasSize(20_000 * TICK_LENGTH);
    }

    @Test
    void theDirectRecorderForcesBeforeItAnswersAndTellsAFullDiskOnce() {
        FakeStore small = new FakeStore(2 * TICK_LENGTH);
        Recorder recorder = new DirectRecorder(small, told::add);
        Consumer<String> failed = sentence -> small.note("not sent");
        Stream.generate(() -> TICK).limit(2).forEach(tick -> recorder.append(tick.at(), tick.stimulus()));
        recorder.whenDurable(() -> small.note("sent"), failed);
        recorder.append(TICK.at(), TICK.stimulus());
        recorder.whenDurable(() -> small.note("sent"), failed);
        recorder.append(TICK.at(), TICK.stimulus());
        recorder.close();

        assertThat(small.calls()).containsExactly("write 50", "force", "sent", "not sent", "close");
        assertThat(told).hasSize(1).first().asString().contains("No space left on device");
    }

    private JournalWriter writer(JournalStore store) {
        return new JournalWriter(store, Runnable::run, told::add);
    }

    private static byte[] records(List<Entry> entries) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (Entry entry : entries) {
            bytes.write(JournalCodec.write(entry));
        }
        return bytes.toByteArray();
    }

    /** The first records of the run that make exactly {@code length} bytes, or as many as fit. */
    private static byte[] recordsWithin(int length) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (Entry entry : Stimuli.run(200)) {
            byte[] record = write(entry);
            if (bytes.size() + record.length > length) {
                return bytes.toByteArray();
            }
            bytes.writeBytes(record);
        }
        return bytes.toByteArray();
    }

    private static byte[] write(Entry entry) {
        try {
            return JournalCodec.write(entry);
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
    }
}
