package ouzel.protocol.frame;

/**
 * What a parser made of the line so far. Empty frames, which is what two delimiters in a row are, count nowhere.
 *
 * @param good frames whose checksum held
 * @param badStuffing runs between two delimiters that were not stuffed bytes
 * @param badCrc frames whose checksum did not hold
 * @param tooShort frames with no room for a header and a checksum
 * @param tooLong runs longer than any frame may be, each counted once however long
 */
public record ParserCounts(long good, long badStuffing, long badCrc, long tooShort, long tooLong) {
    /** Before the first byte. */
    public static final ParserCounts NONE = new ParserCounts(0, 0, 0, 0, 0);

    /** All that was thrown away. */
    public long bad() {
        return badStuffing + badCrc + tooShort + tooLong;
    }
}
