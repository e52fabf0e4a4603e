package ouzel.app.journal;

import java.util.Optional;
import ouzel.app.desk.Desk;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Moment;
import ouzel.app.exit.Refusal;

/** Folds a journal again, as fast as it can be read, to the state that the desk had at its end. */
public final class PlaybackFold {
    private PlaybackFold() {}

    /**
     * What a journal came to.
     *
     * @param header what the file says of itself
     * @param state the desk after the last whole record; its samples are the sortie's samples
     * @param records how many records were folded
     * @param dropped what stood behind the last whole record, if anything did
     */
    public record Result(JournalHeader header, DeskState state, long records, Optional<Dropped> dropped) {}

    /**
     * Folds all that {@code reader} still has to give. Effects are left alone: nothing is sent and nothing sounds.
     *
     * @throws Refusal if the disk fails while reading
     */
    public static Result fold(JournalReader reader) throws Refusal {
        Optional<Entry> next = reader.next();
        DeskState state = Desk.start(next.map(Entry::at)
                .orElse(new Moment(0, reader.header().created().toEpochMilli())));
        long records = 0;
        while (next.isPresent()) {
            state = Desk.fold(state, next.get().at(), next.get().stimulus()).state();
            records++;
            next = reader.next();
        }
        return new Result(reader.header(), state, records, reader.dropped());
    }
}
