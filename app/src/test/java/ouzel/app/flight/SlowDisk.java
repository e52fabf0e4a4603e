package ouzel.app.flight;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;
import ouzel.app.journal.Recorder;

/** A journal on a disk that stands still, goes on, or fails when it is told to. */
final class SlowDisk implements Recorder {
    private final List<Runnable> waiting = new ArrayList<>();
    private final List<Runnable> waitingToFail = new ArrayList<>();
    private boolean standsStill;
    private String failure = "";

    @Override
    public void append(Moment at, Stimulus stimulus) {
        // What is taken down does not matter here, only when it would be safe.
    }

    @Override
    public void whenDurable(Runnable done, Consumer<String> failed) {
        if (!failure.isEmpty()) {
            failed.accept(failure);
        } else if (standsStill) {
            waiting.add(done);
            waitingToFail.add(() -> failed.accept(failure));
        } else {
            done.run();
        }
    }

    void standStill() {
        standsStill = true;
    }

    void goOn() {
        standsStill = false;
        answer(waiting);
    }

    void fail(String sentence) {
        failure = sentence;
        answer(waitingToFail);
    }

    private void answer(List<Runnable> answers) {
        List<Runnable> all = List.copyOf(answers);
        waiting.clear();
        waitingToFail.clear();
        all.forEach(Runnable::run);
    }

    @Override
    public void close() {
        // Holds nothing.
    }
}
