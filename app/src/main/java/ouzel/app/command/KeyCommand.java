package ouzel.app.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.Refusal;
import ouzel.app.key.KeyFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a pairing key file. */
@Command(
        name = "key",
        description = {
            "Makes a file with a new pairing key that you alone can read. It is never overwritten and never shown.",
            "",
            "Console and payload must hold the same key: carry the file by hand, do not send it.",
            ""
        },
        footerHeading = "%nExample:%n",
        footer = "  ouzel key pond.key")
final class KeyCommand implements Callable<Integer> {
    @Spec
    private CommandSpec command;

    @Parameters(paramLabel = "FILE", description = "The file to make.")
    private Path file;

    @Override
    public Integer call() throws Refusal {
        KeyFile.create(file);
        command.commandLine().getOut().println("New pairing key in " + file + ", readable by you alone.");
        return ExitCode.OK.code();
    }
}
