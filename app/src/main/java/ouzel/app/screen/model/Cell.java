package ouzel.app.screen.model;

/**
 * One value of the header strip.
 *
 * @param caption what it is
 * @param value the value with its unit
 * @param note a word beside it, such as its age; may be empty
 * @param standing how far the value can be believed
 * @param attention how much it asks for the eyes
 */
public record Cell(String caption, String value, String note, Standing standing, Attention attention) {
    /** Caption, value and note as one sentence for a screen reader. */
    public String spoken() {
        String known = standing == Standing.STALE ? "stale, " : "";
        return caption + ": " + known + value + (note.isEmpty() ? "" : ", " + note);
    }
}
