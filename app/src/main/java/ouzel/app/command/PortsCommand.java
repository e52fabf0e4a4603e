package ouzel.app.command;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.Refusal;
import ouzel.app.link.SerialPorts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists the serial lines of this computer. */
@Command(
        name = "ports",
        description = {"Lists the serial lines of this computer, with what each device says of itself.", ""},
        footerHeading = "%nExample:%n",
        footer = "  ouzel ports")
final class PortsCommand implements Callable<Integer> {
    private final Supplier<SerialPorts.Found> search;

    @Spec
    private CommandSpec command;

    PortsCommand(Supplier<SerialPorts.Found> search) {
        this.search = search;
    }

    @Override
    public Integer call() throws Refusal {
        SerialPorts.Found found = search.get();
        if (!found.trouble().isEmpty()) {
            throw new Refusal(ExitCode.PORT_UNSUITABLE, found.trouble());
        }
        PrintWriter out = command.commandLine().getOut();
        if (found.entries().isEmpty()) {
            out.println("There is no serial line on this computer now: plug the radio in and ask again.");
        }
        found.entries().forEach(entry -> out.println(entry.name() + "  " + entry.description()));
        return ExitCode.OK.code();
    }
}
