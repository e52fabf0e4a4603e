package ouzel.app.command;

import java.util.concurrent.Callable;
import ouzel.app.exit.Refusal;
import ouzel.app.link.Port;
import ouzel.protocol.session.PairingKey;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Measures the link to a payload, for the check before a flight. */
@Command(
        name = "link-test",
        description = {
            "Measures the link to a payload, prints what it found, and says by its exit code whether it will do.",
            "",
            "Nothing on board is moved: the payload is only asked questions. A desk that has the payload loses its"
                    + " session, and an armed sampler goes safe; so test before the desk is opened.",
            "",
            "Good enough means that surely 90 %% of the frames arrive, 95 of 100 answers are back within 1 s, and the"
                    + " session lasts.",
            ""
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  ouzel link-test --tcp localhost:5760 --seconds 10",
            "  ouzel link-test --serial /dev/ttyUSB0 --key pond.key",
        })
final class LinkTestCommand implements Callable<Integer> {
    private static final int SHORTEST_SECONDS = 2;
    private static final int LONGEST_SECONDS = 600;

    private final Programs programs;

    @Spec
    private CommandSpec command;

    @Option(names = "--tcp", paramLabel = "HOST:PORT", description = "Network address of the payload.")
    private String tcp;

    @Mixin
    private SerialOptions serial;

    @Mixin
    private KeyOption key;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            defaultValue = "20",
            description = "How long to measure, 2 to 600 s; 20 unless given.")
    private int seconds;

    LinkTestCommand(Programs programs) {
        this.programs = programs;
    }

    @Override
    public Integer call() throws Refusal {
        serial.requireSense(tcp != null);
        if (tcp == null && !serial.isGiven()) {
            throw new ParameterException(
                    command.commandLine(), "Say where the payload is: --tcp HOST:PORT or --serial PORT.");
        }
        if (seconds < SHORTEST_SECONDS || seconds > LONGEST_SECONDS) {
            throw new ParameterException(
                    command.commandLine(),
                    "--seconds " + seconds + " is out of range: " + SHORTEST_SECONDS + " to " + LONGEST_SECONDS + ".");
        }
        Port port = serial.isGiven() ? serial.port() : network();
        PairingKey pairing = key.key(serial.isGiven());
        LinkTestRequest request = new LinkTestRequest(port, pairing, seconds);
        return programs.linkTest(request, command.commandLine().getOut()).code();
    }

    private Port network() {
        try {
            return Port.Tcp.parse(tcp);
        } catch (IllegalArgumentException wrong) {
            throw new ParameterException(command.commandLine(), wrong.getMessage(), wrong);
        }
    }
}
