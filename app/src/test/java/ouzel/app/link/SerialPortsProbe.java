package ouzel.app.link;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** A program that says what listing and opening serial lines come to; started by a test on a crippled computer. */
final class SerialPortsProbe {
    private SerialPortsProbe() {}

    public static void main(String[] arguments) {
        PrintStream said = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        said.println(new SerialPorts().search().toCompletableFuture().join().trouble());
        try {
            new SerialDevice("/dev/tty", Port.Serial.USUAL_SPEED, false).open();
        } catch (LineFailure failure) {
            said.println(failure.getMessage());
        }
    }
}
