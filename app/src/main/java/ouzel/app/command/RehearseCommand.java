package ouzel.app.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import ouzel.app.exit.Refusal;
import ouzel.protocol.session.PairingKey;
import ouzel.simulator.rehearsal.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Flies a rehearsal: in a window, or whole and at once without one. */
@Command(
        name = "rehearse",
        description = {
            "Flies a rehearsal with a simulated payload; nothing can move.",
            "",
            "With --headless a whole sortie (air, water, soil) is flown without a window in virtual time, its journal"
                    + " and a table of its samples are written, and each sample is printed in a line.",
            ""
        },
        footerHeading = "%nExample:%n",
        footer = "  ouzel rehearse --headless --seed 42 --out /tmp/sortie")
final class RehearseCommand implements Callable<Integer> {
    private static final int MOST_FLIGHTS = 100_000;

    private final Programs programs;
    private final Screens screens;
    private final Home home;

    @Spec
    private CommandSpec command;

    @Option(names = "--headless", description = "Without a window, as fast as the computer can.")
    private boolean headless;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "Seed of all chance: the same seed gives the same sortie. 1 unless given.")
    private long seed;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Directory for what is written; ~/.ouzel/rehearsals unless given.")
    private Path out;

    @Option(
            names = "--site",
            paramLabel = "NAME",
            description = "A site of the rehearsal campaign: 'Quarry north shelf' (unless given), 'Reed bed inlet',"
                    + " 'Landfill drain pond'.")
    private String site = Site.QUARRY.name();

    @Option(
            names = "--flights",
            paramLabel = "N",
            defaultValue = "1",
            description = "With --headless: fly N sorties, with this seed and those that follow it.")
    private int flights;

    RehearseCommand(Programs programs, Screens screens, Home home) {
        this.programs = programs;
        this.screens = screens;
        this.home = home;
    }

    @Override
    public Integer call() throws Refusal {
        Path directory = out == null ? home.journals(true) : out;
        if (headless) {
            RehearsalRequest request = new RehearsalRequest(seed, directory, place(), flights());
            return programs.rehearse(
                            request,
                            command.commandLine().getOut(),
                            command.commandLine().getErr())
                    .code();
        }
        screens.require("ouzel rehearse --headless --seed " + seed + " --out DIR");
        DeskRequest request = new DeskRequest(Optional.empty(), PairingKey.rehearsal(), true, seed, directory, site);
        return programs.desk(request, command.commandLine().getOut()).code();
    }

    private Site place() {
        return Site.named(site)
                .orElseThrow(() -> new ParameterException(
                        command.commandLine(),
                        "There is no site '" + site + "' in the rehearsal campaign: "
                                + Site.CAMPAIGN.stream().map(Site::name).collect(Collectors.joining(", ")) + "."));
    }

    private int flights() {
        if (flights < 1 || flights > MOST_FLIGHTS) {
            throw new ParameterException(
                    command.commandLine(),
                    "--flights " + flights + " cannot be flown: 1 to " + MOST_FLIGHTS + " is expected.");
        }
        return flights;
    }
}
