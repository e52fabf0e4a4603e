package ouzel.app.command;

import java.util.function.Supplier;
import ouzel.app.link.Port;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A serial line as the second half of a choice between TCP and serial. */
final class SerialOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Option(
            names = "--serial",
            paramLabel = "PORT",
            description = "Serial line, for example /dev/ttyUSB0 or COM3; 'ouzel ports' lists them. With 'auto' the"
                    + " payload is looked for on every line, and found by its key; 'auto,/dev/serial/by-id/*' looks at"
                    + " more names.")
    private String name;

    @Option(
            names = "--baud",
            paramLabel = "N",
            description = "Speed of the serial line: 9600 to 921600, 57600 unless given.")
    private Integer baud;

    @Option(
            names = "--hold-lines-low",
            description =
                    "Keep the control lines DTR and RTS low while opening, for controllers that restart otherwise.")
    private boolean holdsControlLinesLow;

    boolean isGiven() {
        return name != null;
    }

    /** The line as given, or a search for it; only if {@link #isGiven}. */
    Port port() {
        return Port.Search.isMeantBy(name) ? understood(this::search) : line();
    }

    /** The line as given, where a search will not do; only if {@link #isGiven}. */
    Port.Serial line() {
        if (Port.Search.isMeantBy(name)) {
            throw new ParameterException(
                    command.commandLine(), "A payload has a serial line of its own: name it instead of 'auto'.");
        }
        return understood(() -> new Port.Serial(name, speedOr(Port.Serial.USUAL_SPEED), holdsControlLinesLow));
    }

    private Port.Search search() {
        Port.Search said = Port.Search.parse(name);
        return new Port.Search(said.patterns(), speedOr(said.baud()), holdsControlLinesLow);
    }

    private int speedOr(int otherwise) {
        return baud == null ? otherwise : baud;
    }

    private <T> T understood(Supplier<T> port) {
        try {
            return port.get();
        } catch (IllegalArgumentException wrong) {
            throw new ParameterException(command.commandLine(), wrong.getMessage(), wrong);
        }
    }

    /** Refuses options that mean nothing without {@code --serial}, and {@code --serial} beside {@code --tcp}. */
    void requireSense(boolean tcpGiven) {
        if (tcpGiven && isGiven()) {
            throw new ParameterException(command.commandLine(), "Give either --tcp or --serial, not both.");
        }
        if (!isGiven() && (baud != null || holdsControlLinesLow)) {
            throw new ParameterException(
                    command.commandLine(),
                    "--baud and --hold-lines-low belong to a serial line: name it with --serial.");
        }
    }
}
