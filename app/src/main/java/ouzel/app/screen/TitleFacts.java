package ouzel.app.screen;

/**
 * What stands in the window's title.
 *
 * @param site where
 * @param rehearsal true if the payload is a simulated one
 */
public record TitleFacts(String site, boolean rehearsal) {
    /** The title. */
    public String title() {
        return (rehearsal ? "REHEARSAL  –  " : "") + "Ouzel  –  " + site;
    }
}
