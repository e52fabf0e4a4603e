package ouzel.app.screen;

import ouzel.app.desk.Act;
import ouzel.app.desk.DeskState;

/** The screen's only way to the desk: the newest state one way, what the operator does the other. */
public interface DeskFeed {
    /** The newest state; cheap and without waiting. Thread: any. */
    DeskState latest();

    /**
     * False for a playback: then nothing shown can be acted on, and a state that stands still is no desk that stopped.
     * Thread: any.
     */
    default boolean isLive() {
        return true;
    }

    /** Hands an act to the desk and returns at once. Thread: any. */
    void act(Act act);
}
