package ouzel.app.command;

import java.security.SecureRandom;
import java.util.Optional;
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

/** Runs a simulated payload behind a TCP port or a serial line. */
@Command(
        name = "payload",
        description = {
            "Runs a simulated payload that a desk, here or elsewhere, can be opened on. Ends with Ctrl-C.",
            "",
            "It is the same controller that a rehearsal inside the desk flies: arming, limits, dead-man, events.",
            ""
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  ouzel payload --tcp 5760                        for 'ouzel desk --tcp localhost:5760'",
            "  ouzel payload --serial /dev/ttyUSB1 --key pond.key --seed 7",
        })
final class PayloadCommand implements Callable<Integer> {
    private static final int HIGHEST_PORT = 65_535;

    private final Programs programs;

    @Spec
    private CommandSpec command;

    @Option(names = "--tcp", paramLabel = "PORT", description = "TCP port to wait on, 0 for any free one.")
    private Integer tcp;

    @Option(names = "--any-host", description = "Let other computers connect too; without it only this one can.")
    private boolean anyHost;

    @Mixin
    private SerialOptions serial;

    @Mixin
    private KeyOption key;

    @Option(names = "--seed", paramLabel = "N", description = "Seed: the same seed gives the same payload and weather.")
    private Long seed;

    PayloadCommand(Programs programs) {
        this.programs = programs;
    }

    @Override
    public Integer call() throws Refusal {
        serial.requireSense(tcp != null);
        if (tcp == null && !serial.isGiven()) {
            throw new ParameterException(
                    command.commandLine(), "Say where the payload is to be reached: --tcp PORT or --serial PORT.");
        }
        if (tcp != null && (tcp < 0 || tcp > HIGHEST_PORT)) {
            throw new ParameterException(
                    command.commandLine(), "There is no TCP port " + tcp + ": 0 to " + HIGHEST_PORT + " is expected.");
        }
        Optional<Port.Serial> line = serial.isGiven() ? Optional.of(serial.line()) : Optional.empty();
        PairingKey pairing = key.key(serial.isGiven());
        long chance = seed == null ? new SecureRandom().nextInt(Integer.MAX_VALUE) : seed;
        PayloadRequest request = new PayloadRequest(line, tcp == null ? 0 : tcp, anyHost, pairing, chance);
        return programs.payload(request, command.commandLine().getOut()).code();
    }
}
