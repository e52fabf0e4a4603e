package ouzel.app.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.Refusal;
import ouzel.app.link.SerialPorts;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * The command line as a whole: all commands, one sentence for whatever goes wrong, an exit code for each way to end.
 *
 * <p>No stack trace ever reaches the terminal; it goes to the log.
 */
final class Shell {
    private static final Logger LOG = LoggerFactory.getLogger(Shell.class);
    private static final Set<String> FOR_THE_PROGRAM_ITSELF = Set.of("-h", "--help", "-V", "--version");

    private final Home home;
    private final CommandLine root;

    Shell(Programs programs, Screens screens, Home home, Supplier<SerialPorts.Found> ports) {
        this.home = home;
        this.root = new CommandLine(new RootCommand())
                .addSubcommand(new DeskCommand(programs, screens, home))
                .addSubcommand(new RehearseCommand(programs, screens, home))
                .addSubcommand(new PayloadCommand(programs))
                .addSubcommand(new PlaybackCommand(programs, screens))
                .addSubcommand(new PortsCommand(ports))
                .addSubcommand(new LinkTestCommand(programs))
                .addSubcommand(new KeyCommand());
        root.getSubcommands().values().forEach(Shell::dress);
        dress(root);
        root.setParameterExceptionHandler(Shell::notUnderstood);
        root.setExecutionExceptionHandler(this::failed);
    }

    private static void dress(CommandLine command) {
        Map<String, String> meanings = new LinkedHashMap<>();
        Arrays.stream(ExitCode.values())
                .forEach(ending -> meanings.put(String.valueOf(ending.code()), ending.meaning()));
        command.getCommandSpec()
                .mixinStandardHelpOptions(true)
                .versionProvider(new BuildFacts())
                .usageMessage()
                .width(100)
                .sortOptions(false)
                .exitCodeListHeading("%nExit codes:%n")
                .exitCodeList(meanings);
    }

    /** Lets everything be printed to these instead of the terminal. */
    Shell printingTo(PrintWriter out, PrintWriter err) {
        root.setOut(out).setErr(err);
        return this;
    }

    /** Carries out one command line and gives the code to end with. */
    int run(String... words) {
        return root.execute(withCommand(words));
    }

    /** Prints one sentence where complaints go. */
    void complain(String sentence) {
        root.getErr().println(sentence);
    }

    /** {@code words} with {@code desk} in front if they name no command. */
    private static String[] withCommand(String... words) {
        boolean namesCommand =
                words.length > 0 && (!words[0].startsWith("-") || FOR_THE_PROGRAM_ITSELF.contains(words[0]));
        if (namesCommand) {
            return words;
        }
        List<String> all = new ArrayList<>(List.of("desk"));
        all.addAll(Arrays.asList(words));
        return all.toArray(String[]::new);
    }

    private static int notUnderstood(ParameterException wrong, String... words) {
        CommandLine command = wrong.getCommandLine();
        command.getErr()
                .println(sentence(wrong) + " See '" + command.getCommandSpec().qualifiedName() + " --help'.");
        return ExitCode.USAGE.code();
    }

    private static String sentence(ParameterException wrong) {
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            String word = unmatched.getUnmatched().get(0);
            String kind = unmatched.isUnknownOption() ? "Unknown option '" : "Unknown word '";
            return kind + word + "'" + suggestion(word, wrong.getCommandLine());
        }
        String message = wrong.getMessage().lines().findFirst().orElse("");
        String plain = message.replaceFirst(" is not an? (long|int)$", " is not a whole number");
        return plain.endsWith(".") ? plain : plain + ".";
    }

    private static String suggestion(String word, CommandLine command) {
        Set<String> known = new TreeSet<>(command.getCommandSpec().optionsMap().keySet());
        known.addAll(command.getSubcommands().keySet());
        return Closest.of(word, known)
                .map(close -> ": did you mean '" + close + "'?")
                .orElse(".");
    }

    private int failed(Exception failure, CommandLine command, ParseResult parsed) {
        PrintWriter err = command.getErr();
        if (failure instanceof Refusal refusal) {
            LOG.info("{} ({})", refusal.sentence(), refusal.exitCode(), refusal.getCause());
            err.println(refusal.sentence());
            return refusal.exitCode().code();
        }
        LOG.error("A fault of this program", failure);
        err.println(faultSentence(failure, home));
        return ExitCode.INTERNAL.code();
    }

    /** What is said of a fault of the program's own, with the place where the details are. */
    static String faultSentence(Throwable fault, Home home) {
        return "The program ran into a fault of its own (" + fault.getClass().getSimpleName() + "); " + home.log()
                + " tells the details.";
    }
}
