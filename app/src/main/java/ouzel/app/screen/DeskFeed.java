package ouzel.app.screen;

import ouzel.app.desk.Act;
import ouzel.app.desk.DeskState;

/** The screen's only way to the desk: the newest state one way, what the operator does the other. */
public interface DeskFeed {
    /** The newest state; cheap and without waiting. Thread: any. */
    DeskState latest();

    /** Hands an act to the desk and returns at once. Thread: any. */
    void act(Act act);
}
