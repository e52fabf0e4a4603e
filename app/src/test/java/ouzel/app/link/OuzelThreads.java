package ouzel.app.link;

import java.time.Duration;
import java.util.List;
import org.awaitility.Awaitility;

/** The threads that this program has started, all named after it. */
final class OuzelThreads {
    private OuzelThreads() {}

    /** Waits until none is left: a thread that has done its work may need another moment to end. */
    static void awaitEnd() {
        Awaitility.await("the end of all threads")
                .pollInterval(Duration.ofMillis(2))
                .until(() -> alive().isEmpty());
    }

    private static List<String> alive() {
        return Thread.getAllStackTraces().keySet().stream()
                .map(Thread::getName)
                .filter(name -> name.startsWith("ouzel"))
                .toList();
    }
}
