package ouzel.app.desk;

import java.util.Optional;
import ouzel.protocol.message.Sampler;

/**
 * One plain sentence in the desk's journal list.
 *
 * @param number counts up from 1
 * @param at when
 * @param sampler whose, if any
 * @param weight how much it matters
 * @param sentence what happened
 */
public record Note(long number, Moment at, Optional<Sampler> sampler, Weight weight, String sentence) {
    /** How much a note matters. */
    public enum Weight {
        /** For the record. */
        PLAIN,
        /** Worth a look. */
        ATTENTION,
        /** Stays on top until the operator has acknowledged it or it is resolved. */
        PINNED
    }

    Note resolved() {
        return new Note(number, at, sampler, Weight.ATTENTION, sentence);
    }
}
