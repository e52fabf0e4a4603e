package ouzel.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.Refusal;

/**
 * The programs behind the commands. Each method returns when its program has ended, and says how.
 *
 * <p>Thread: the main thread, which may block for as long as a window is open.
 */
interface Programs {
    /** Opens a desk in a window. */
    ExitCode desk(DeskRequest request, PrintWriter out) throws Refusal;

    /** Runs a simulated payload until the process is told to end. */
    ExitCode payload(PayloadRequest request, PrintWriter out) throws Refusal;

    /** Flies whole sorties in virtual time; samples go to {@code out}, all else to {@code err}. */
    ExitCode rehearse(RehearsalRequest request, PrintWriter out, PrintWriter err) throws Refusal;

    /** Shows a journal in a window. */
    ExitCode playback(Path journal, PrintWriter out) throws Refusal;

    /** Measures the link to a payload and prints what it found. */
    ExitCode linkTest(LinkTestRequest request, PrintWriter out) throws Refusal;
}
