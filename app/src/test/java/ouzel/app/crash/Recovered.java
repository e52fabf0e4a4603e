package ouzel.app.crash;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import ouzel.app.desk.Desk;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Lane;
import ouzel.app.desk.OrderTrack;
import ouzel.app.desk.Stimulus;
import ouzel.app.exit.Refusal;
import ouzel.app.journal.Entry;
import ouzel.app.journal.JournalFiles;
import ouzel.app.journal.JournalReader;
import ouzel.protocol.message.Event;

/**
 * What the journal of a killed console still tells, folded record by record.
 *
 * @param lines every state that was passed, as a {@link Digest#line}
 * @param orders ids of every arm and trigger that was issued
 * @param events numbers of every event that was heard
 * @param lastNanos the console's clock at the last whole record
 * @param records how many whole records there are
 */
record Recovered(Set<String> lines, Set<Long> orders, Set<Long> events, long lastNanos, long records) {
    /** Opens the one journal in {@code directory}; empty if the console was killed before it made one. */
    static Optional<Recovered> from(Path directory) throws IOException, Refusal {
        List<Path> journals;
        try (Stream<Path> files = Files.list(directory)) {
            journals = files.filter(file -> file.toString().endsWith(JournalFiles.SUFFIX))
                    .filter(file -> file.toFile().length() > 0)
                    .toList();
        }
        return journals.isEmpty() ? Optional.empty() : Optional.of(read(journals.get(0)));
    }

    private static Recovered read(Path journal) throws IOException, Refusal {
        Set<String> lines = new HashSet<>();
        Set<Long> orders = new HashSet<>();
        Set<Long> events = new HashSet<>();
        long records = 0;
        try (JournalReader reader = JournalReader.open(journal)) {
            Optional<Entry> next = reader.next();
            DeskState state = next.map(entry -> Desk.start(entry.at())).orElse(null);
            while (next.isPresent()) {
                records++;
                if (next.get().stimulus() instanceof Stimulus.Heard heard && heard.message() instanceof Event event) {
                    events.add(event.number());
                }
                state = Desk.fold(state, next.get().at(), next.get().stimulus()).state();
                lines.add(Digest.line(state));
                state.lanes().stream().flatMap(Recovered::hazardous).forEach(orders::add);
                next = reader.next();
            }
            long last = state == null ? Long.MIN_VALUE : state.now().nanos();
            return new Recovered(lines, orders, events, last, records);
        }
    }

    private static Stream<Long> hazardous(Lane lane) {
        return Stream.of(lane.arm(), lane.trigger()).flatMap(Optional::stream).map(OrderTrack::orderId);
    }
}
