package ouzel.simulator.radio;

/**
 * What became of the chunks given to a radio. Every chunk offered is overflowed, lost, delivered or still under way.
 *
 * @param offered chunks given to the modem
 * @param overflowed refused because the modem's buffer was full
 * @param lost lost in the air, outages included
 * @param duplicated extra copies made
 * @param corrupted copies with at least one bit flipped
 * @param reordered chunks sent on a slower way than those after them
 * @param heldBack chunks kept by a modem for seconds
 * @param delivered copies handed out at the far end
 */
public record Tally(
        long offered,
        long overflowed,
        long lost,
        long duplicated,
        long corrupted,
        long reordered,
        long heldBack,
        long delivered) {}
