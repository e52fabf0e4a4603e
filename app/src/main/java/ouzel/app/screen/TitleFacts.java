package ouzel.app.screen;

/**
 * What stands in the window's title.
 *
 * @param site where
 * @param rehearsal true if the payload is a simulated one
 */
public record TitleFacts(String site, boolean rehearsal) {
    /** What must not be mistaken: a rehearsal or a playback, in a word; empty for a live flight. */
    String mark(boolean isLive) {
        if (isLive) {
            return rehearsal ? "REHEARSAL" : "";
        }
        return rehearsal ? "REHEARSAL PLAYBACK" : "PLAYBACK";
    }

    String title(boolean isLive) {
        String mark = mark(isLive);
        return (mark.isEmpty() ? "" : mark + "  –  ") + "Ouzel  –  " + site;
    }
}
