package ouzel.app.journal;

/**
 * The end of a journal that could not be used.
 *
 * @param position where the last whole record ends, bytes from the start of the file
 * @param bytes how many bytes stand behind it
 * @param why what is there instead of a record, as the end of a sentence
 */
public record Dropped(long position, long bytes, String why) {
    /** What was dropped, in one sentence. */
    public String sentence() {
        return "The last " + bytes + " bytes, from byte " + position + " on, were dropped: there is " + why
                + "; everything before is whole.";
    }
}
