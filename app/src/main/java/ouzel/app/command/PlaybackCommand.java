package ouzel.app.command;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.Callable;
import ouzel.app.desk.Sample;
import ouzel.app.estimate.Verdict.Grade;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.FileTrouble;
import ouzel.app.exit.Refusal;
import ouzel.app.journal.Dropped;
import ouzel.app.journal.JournalReader;
import ouzel.app.journal.PlaybackFold;
import ouzel.app.report.SampleTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plays a journal: in a window, or straight to its samples. */
@Command(
        name = "playback",
        description = {
            "Plays the journal of a sortie: in a window as it was, or with --headless straight to its samples.",
            "",
            "A journal that was cut or damaged is played up to its last whole record, and that is said.",
            ""
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  ouzel playback sortie.ouzel",
            "  ouzel playback sortie.ouzel --headless --csv samples.csv",
        })
final class PlaybackCommand implements Callable<Integer> {
    private final Programs programs;
    private final Screens screens;

    @Spec
    private CommandSpec command;

    @Parameters(paramLabel = "FILE", description = "A journal; its name ends in .ouzel.")
    private Path journal;

    @Option(names = "--headless", description = "Without a window: print one line per sample.")
    private boolean headless;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description = "With --headless: also write the samples as a table; an existing file is not overwritten.")
    private Path table;

    PlaybackCommand(Programs programs, Screens screens) {
        this.programs = programs;
        this.screens = screens;
    }

    @Override
    public Integer call() throws Refusal {
        if (headless) {
            return printed().code();
        }
        screens.require("ouzel playback " + journal + " --headless");
        return programs.playback(journal, command.commandLine().getOut()).code();
    }

    private ExitCode printed() throws Refusal {
        PlaybackFold.Result result = fold();
        PrintWriter out = command.commandLine().getOut();
        List<Sample> samples = result.state().samples();
        PrintWriter err = command.commandLine().getErr();
        err.println((result.header().rehearsal() ? "REHEARSAL at " : "Sortie at ")
                + result.state().plan().site() + ", begun " + result.header().created() + ", recorded by version "
                + result.header().programVersion() + ", " + result.records() + " records.");
        result.dropped().map(Dropped::sentence).ifPresent(err::println);
        samples.forEach(sample -> out.println(sample.line()));
        if (table != null) {
            write(samples);
        }
        return ending(result);
    }

    private PlaybackFold.Result fold() throws Refusal {
        try (JournalReader reader = JournalReader.open(journal)) {
            return PlaybackFold.fold(reader);
        } catch (IOException trouble) {
            throw new Refusal(
                    ExitCode.JOURNAL_UNREADABLE,
                    "The journal " + journal + " cannot be closed: " + FileTrouble.words(trouble) + ".",
                    trouble);
        }
    }

    private static ExitCode ending(PlaybackFold.Result result) {
        if (result.dropped().isPresent()) {
            return ExitCode.JOURNAL_CUT;
        }
        boolean accepted = result.state().samples().stream()
                .allMatch(sample -> sample.verdict().grade() == Grade.ACCEPTED);
        return accepted ? ExitCode.OK : ExitCode.SAMPLE_NOT_ACCEPTED;
    }

    private void write(List<Sample> samples) throws Refusal {
        try (BufferedWriter target = Files.newBufferedWriter(table, StandardOpenOption.CREATE_NEW)) {
            SampleTable.write(samples, target);
        } catch (IOException trouble) {
            throw new Refusal(
                    ExitCode.NOT_WRITABLE,
                    "The table " + table + " cannot be written: " + FileTrouble.words(trouble) + ".",
                    trouble);
        }
    }
}
