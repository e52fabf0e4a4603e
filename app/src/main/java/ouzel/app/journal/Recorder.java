package ouzel.app.journal;

import java.util.function.Consumer;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;

/** Takes down what happens to the desk. Nothing here ever makes the desk wait or fail. */
public interface Recorder extends AutoCloseable {
    /** Takes down one stimulus behind all before it; returns at once. Thread: desk. */
    void append(Moment at, Stimulus stimulus);

    /**
     * Calls {@code done} once everything appended so far would survive a loss of power, or {@code failed} with a
     * sentence if that cannot be had. Exactly one of the two is called, once, on the desk thread. Thread: desk.
     */
    void whenDurable(Runnable done, Consumer<String> failed);

    /** Writes and secures what was appended, then lets go of the file; a second call does nothing. */
    @Override
    void close();
}
