package ouzel.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.Refusal;

/** Calls the programs behind the commands. */
final class Flights implements Programs {
    @Override
    public ExitCode desk(DeskRequest request, PrintWriter out) throws Refusal {
        throw missing("desk");
    }

    @Override
    public ExitCode payload(PayloadRequest request, PrintWriter out) throws Refusal {
        throw missing("payload");
    }

    @Override
    public ExitCode rehearse(RehearsalRequest request, PrintWriter out) throws Refusal {
        throw missing("rehearse");
    }

    @Override
    public ExitCode playback(Path journal, PrintWriter out) throws Refusal {
        throw missing("playback without --headless");
    }

    private static Refusal missing(String what) {
        return new Refusal(ExitCode.INTERNAL, "This build has no program behind '" + what + "' yet.");
    }
}
