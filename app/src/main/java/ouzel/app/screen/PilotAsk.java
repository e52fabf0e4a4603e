package ouzel.app.screen;

/** What the operator can ask of the simulated pilot in a rehearsal. */
public enum PilotAsk {
    /** Lift off, or stay aloft, over the site. */
    HOVER("Hover", "F2"),
    /** Set the aircraft down on its floats and stop the rotors. */
    SET_DOWN_ON_WATER("Down on water", "F3"),
    /** Set the aircraft down on its legs and stop the rotors. */
    SET_DOWN_ON_GROUND("Down on ground", "F4");

    private final String words;
    private final String key;

    PilotAsk(String words, String key) {
        this.words = words;
        this.key = key;
    }

    /** What the button says. */
    public String words() {
        return words;
    }

    /** The key that asks the same, as it is printed. */
    public String key() {
        return key;
    }
}
