package ouzel.app.screen;

/** The simulated pilot of a rehearsal. */
public interface PilotFeed {
    /** Asks the pilot for something and returns at once. Thread: any. */
    void ask(PilotAsk ask);

    /** One line: what the pilot is doing. Cheap and without waiting. Thread: any. */
    String says();
}
