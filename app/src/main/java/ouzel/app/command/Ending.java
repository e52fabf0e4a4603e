package ouzel.app.command;

import java.util.concurrent.CountDownLatch;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import ouzel.app.exit.ExitCode;

/**
 * How programs end: a window that closes, or a process that is told to.
 *
 * <p><b>Thread:</b> any.
 */
final class Ending {
    private static final Logger LOG = LoggerFactory.getLogger(Ending.class);

    private final CountDownLatch ended = new CountDownLatch(1);

    /** Something that waits for its own end. */
    interface Waiting {
        void await() throws InterruptedException;
    }

    /** Closes {@code program} when the process is told to end. */
    static void atShutdown(AutoCloseable program) {
        Runtime.getRuntime().addShutdownHook(new Thread(() -> close(program), "ouzel ending"));
    }

    /** Closes {@code program} on a thread of its own: closing waits, which the screen must not. */
    static void inBackground(AutoCloseable program) {
        new Thread(() -> close(program), "ouzel closing").start();
    }

    /** Waits for a program's end. */
    static ExitCode await(Waiting waiting) {
        try {
            waiting.await();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        return ExitCode.OK;
    }

    /** The end has come. */
    void now() {
        ended.countDown();
    }

    void awaitNow() throws InterruptedException {
        ended.await();
    }

    @SuppressWarnings("IllegalCatch")
    private static void close(AutoCloseable program) {
        try {
            program.close();
        } catch (Exception fault) {
            LOG.error("A program did not close in order", fault);
        }
    }
}
