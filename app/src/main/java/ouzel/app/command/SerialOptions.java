package ouzel.app.command;

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
            description = "Serial line, for example /dev/ttyUSB0 or COM3; 'ouzel ports' lists them.")
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

    /** The line as given; only if {@link #isGiven}. */
    Port.Serial port() {
        try {
            return new Port.Serial(name, baud == null ? Port.Serial.USUAL_SPEED : baud, holdsControlLinesLow);
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
