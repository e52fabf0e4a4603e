package ouzel.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import ouzel.app.desk.Sample;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.Refusal;
import ouzel.app.flight.HeadlessRehearsal;
import ouzel.app.flight.LinkTest;
import ouzel.app.flight.LiveDesk;
import ouzel.app.flight.PayloadHost;
import ouzel.app.flight.PlaybackFeed;
import ouzel.app.screen.DeskWindow;
import ouzel.app.screen.TitleFacts;

/** Puts the programs together behind the commands, and ends them in order, also when the process is told to end. */
final class Flights implements Programs {
    @Override
    public ExitCode desk(DeskRequest request, PrintWriter out) throws Refusal {
        LiveDesk desk = new LiveDesk(
                new LiveDesk.Request(
                        request.port(),
                        request.key(),
                        request.rehearsal(),
                        request.seed(),
                        request.journals(),
                        request.site(),
                        BuildFacts.version()),
                cue -> {});
        Ending.atShutdown(desk);
        TitleFacts facts = new TitleFacts(request.site(), request.rehearsal());
        DeskWindow.show(desk, desk.pilot(), facts, () -> Ending.inBackground(desk));
        out.println("Recording to " + desk.journal());
        out.flush();
        return Ending.await(desk::awaitClosed);
    }

    @Override
    public ExitCode payload(PayloadRequest request, PrintWriter out) throws Refusal {
        PayloadHost host = new PayloadHost(
                new PayloadHost.Request(
                        request.serial(), request.tcpPort(), request.anyHost(), request.key(), request.seed()),
                sentence -> {
                    out.println(sentence);
                    out.flush();
                });
        Ending.atShutdown(host);
        return Ending.await(host::awaitClosed);
    }

    @Override
    public ExitCode rehearse(RehearsalRequest request, PrintWriter out, PrintWriter err) throws Refusal {
        long virtualMillis = 0;
        long realNanos = 0;
        boolean complete = true;
        for (int i = 0; i < request.flights(); i++) {
            long seed = request.seed() + i;
            HeadlessRehearsal.Result result =
                    HeadlessRehearsal.fly(request.site(), seed, request.out(), BuildFacts.version());
            result.samples().stream().map(Sample::line).forEach(out::println);
            virtualMillis += result.virtualMillis();
            realNanos += result.realNanos();
            complete &= result.isComplete();
        }
        err.printf(
                Locale.ROOT,
                "%.1f s flown in %.2f s: %.0f times real time. Journal and table in %s%n",
                virtualMillis / 1e3,
                realNanos / 1e9,
                virtualMillis * 1e6 / realNanos,
                request.out());
        return complete ? ExitCode.OK : ExitCode.SAMPLE_NOT_ACCEPTED;
    }

    @Override
    public ExitCode playback(Path journal, PrintWriter out) throws Refusal {
        PlaybackFeed feed = new PlaybackFeed(journal);
        TitleFacts facts = new TitleFacts("playback of " + journal.getFileName(), feed.isRehearsal());
        Ending ending = new Ending();
        DeskWindow.show(feed, Optional.empty(), facts, ending::now);
        return Ending.await(() -> {
            ending.awaitNow();
            feed.close();
        });
    }

    @Override
    public ExitCode linkTest(LinkTestRequest request, PrintWriter out) throws Refusal {
        LinkTest.Result result = LinkTest.run(request.port(), request.key(), request.seconds());
        LinkTable.lines(result).forEach(out::println);
        return result.isGoodEnough() ? ExitCode.OK : ExitCode.LINK_POOR;
    }
}
