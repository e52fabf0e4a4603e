package ouzel.app.link;

/** Threads that never keep the program alive, each with a name that says what it is for. */
final class DaemonThreads {
    private DaemonThreads() {}

    /** A thread that has not been started yet. */
    static Thread named(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        return thread;
    }
}
