package ouzel.app.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;
import ouzel.app.exit.Refusal;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;

/** A short sortie in the reed bed: one air draw whose current was never heard, so no sample that can be accepted. */
public final class Sorties {
    /** When it began. */
    public static final Instant BEGUN = Instant.parse("2026-05-04T07:30:09Z");

    private static final JournalHeader HEADER = new JournalHeader(BEGUN, true, "0.1.0");

    private Sorties() {}

    /** The sortie's stimuli; one sample. */
    public static List<Entry> withOneUnseenDraw() {
        List<Entry> entries = new ArrayList<>(opened());
        entries.add(at(1_000, event(1, 1_000, Event.Kind.DRAW_STARTED)));
        entries.add(at(30_000, event(2, 30_000, Event.Kind.DRAW_COMPLETED)));
        entries.add(at(33_000, new Stimulus.Ticked()));
        return entries;
    }

    /** A desk that was opened and closed again; no sample. */
    public static List<Entry> opened() {
        return List.of(
                at(0, new Stimulus.Opened(77, true, "reed bed")),
                at(10, new Stimulus.LineChanged(true, "Simulated payload in this program.")));
    }

    /** A journal file of {@code entries} in {@code directory}. */
    public static Path file(Path directory, List<Entry> entries) throws IOException, Refusal {
        JournalFiles.Opened opened = JournalFiles.direct(directory, HEADER, "reed bed", sentence -> {
            throw new AssertionError(sentence);
        });
        entries.forEach(entry -> opened.recorder().append(entry.at(), entry.stimulus()));
        opened.recorder().close();
        return opened.file();
    }

    /** Cuts the last {@code bytes} off {@code file}. */
    public static void cut(Path file, int bytes) throws IOException {
        try (var channel = Files.newByteChannel(file, StandardOpenOption.WRITE)) {
            channel.truncate(channel.size() - bytes);
        }
    }

    private static Entry at(long millis, Stimulus stimulus) {
        return new Entry(new Moment(millis * 1_000_000, BEGUN.toEpochMilli() + millis), stimulus);
    }

    private static Stimulus event(long number, long millis, Event.Kind kind) {
        return Stimuli.heard(new Event(number, 1, millis, kind, Sampler.AIR, 78, Reason.NONE, 600), (int) number);
    }
}
