package ouzel.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import ouzel.app.exit.ExitCode;

/** Takes down what it was asked to start, and starts nothing. */
final class RecordingPrograms implements Programs {
    Optional<DeskRequest> desk = Optional.empty();
    Optional<PayloadRequest> payload = Optional.empty();
    Optional<RehearsalRequest> rehearsal = Optional.empty();
    Optional<Path> journal = Optional.empty();
    Optional<LinkTestRequest> linkTest = Optional.empty();
    Optional<IllegalStateException> fault = Optional.empty();

    @Override
    public ExitCode desk(DeskRequest request, PrintWriter out) {
        desk = Optional.of(request);
        if (fault.isPresent()) {
            throw fault.get();
        }
        return ExitCode.OK;
    }

    @Override
    public ExitCode payload(PayloadRequest request, PrintWriter out) {
        payload = Optional.of(request);
        return ExitCode.OK;
    }

    @Override
    public ExitCode rehearse(RehearsalRequest request, PrintWriter out, PrintWriter err) {
        rehearsal = Optional.of(request);
        return ExitCode.OK;
    }

    @Override
    public ExitCode playback(Path file, PrintWriter out) {
        journal = Optional.of(file);
        return ExitCode.OK;
    }

    @Override
    public ExitCode linkTest(LinkTestRequest request, PrintWriter out) {
        linkTest = Optional.of(request);
        return ExitCode.LINK_POOR;
    }
}
