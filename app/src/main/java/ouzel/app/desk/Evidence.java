package ouzel.app.desk;

/** How the desk knows a condition. */
public enum Evidence {
    /** A sensor on board says so. */
    MEASURED("measured"),
    /** A named person says so, for a limited time. */
    ATTESTED("attested"),
    /** The console worked it out. */
    COMPUTED("computed");

    private final String word;

    Evidence(String word) {
        this.word = word;
    }

    /** The word on the screen. */
    public String word() {
        return word;
    }
}
