package ouzel.app.command;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Optional;
import java.util.concurrent.Callable;
import ouzel.app.exit.Refusal;
import ouzel.app.link.Port;
import ouzel.protocol.session.PairingKey;
import ouzel.simulator.rehearsal.Site;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Opens the desk: live over TCP or a serial line, or, without a port, in rehearsal. */
@Command(
        name = "desk",
        description = {
            "Opens the desk in a window. This is what 'ouzel' alone does.",
            "",
            "Without a port it is a rehearsal: a simulated payload runs inside the program, and nothing can move.",
            ""
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  ouzel desk                                      rehearse at once",
            "  ouzel desk --tcp localhost:5760                 a payload started with 'ouzel payload --tcp 5760'",
            "  ouzel desk --serial /dev/ttyUSB0 --key pond.key --site \"reed bed\"",
            "  ouzel desk --serial auto --key pond.key         wherever the payload answers",
        })
final class DeskCommand implements Callable<Integer> {
    private final Programs programs;
    private final Screens screens;
    private final Home home;

    @Spec
    private CommandSpec command;

    @Option(names = "--tcp", paramLabel = "HOST:PORT", description = "Network address of the payload.")
    private String tcp;

    @Mixin
    private SerialOptions serial;

    @Mixin
    private KeyOption key;

    @Option(
            names = "--rehearsal",
            description = "The payload at the other end is a simulated one. Implied by the rehearsal key.")
    private boolean rehearsal;

    @Option(
            names = "--journal",
            paramLabel = "DIR",
            description = {"Directory for the journal. Unless given:", "~/.ouzel/journals, or ~/.ouzel/rehearsals."})
    private Path journals;

    @Option(names = "--site", paramLabel = "NAME", description = "Where this is, for the record.")
    private String site;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "Seed of the simulated payload: the same seed gives the same payload and weather.")
    private Long seed;

    DeskCommand(Programs programs, Screens screens, Home home) {
        this.programs = programs;
        this.screens = screens;
        this.home = home;
    }

    @Override
    public Integer call() throws Refusal {
        serial.requireSense(tcp != null);
        Optional<Port> port = port();
        PairingKey pairing = key.key(serial.isGiven());
        screens.require("ouzel rehearse --headless --seed 1 --out DIR");
        boolean simulated = rehearsal || port.isEmpty() || pairing.isRehearsal();
        Path directory = journals == null ? home.journals(simulated) : journals;
        long chance = seed == null ? new SecureRandom().nextInt(Integer.MAX_VALUE) : seed;
        String place = site != null ? site : port.isEmpty() ? Site.QUARRY.name() : "unnamed site";
        DeskRequest request = new DeskRequest(port, pairing, simulated, chance, directory, place);
        return programs.desk(request, command.commandLine().getOut()).code();
    }

    private Optional<Port> port() {
        if (serial.isGiven()) {
            return Optional.of(serial.port());
        }
        try {
            return Optional.ofNullable(tcp).map(Port.Tcp::parse);
        } catch (IllegalArgumentException wrong) {
            throw new ParameterException(command.commandLine(), wrong.getMessage(), wrong);
        }
    }
}
