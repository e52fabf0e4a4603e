package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import org.junit.jupiter.api.Test;

class SerialPortsTest {
    @Test
    void asksTheSystemAndNeverFails() {
        SerialPorts.Found found =
                new SerialPorts().search().toCompletableFuture().join();

        assertThat(found.trouble()).isEmpty();
        assertThat(found.entries())
                .allSatisfy(entry -> assertThat(entry.name()).isNotBlank())
                .allSatisfy(entry -> assertThat(entry.description()).isNotBlank());
    }

    @Test
    void aSlowSystemDoesNotHoldUpTheOneWhoAsksAndIsAskedOnce() {
        CompletableFuture<SerialPorts.Found> slowSystem = new CompletableFuture<>();
        SerialPorts ports = new SerialPorts(slowSystem::join);

        CompletionStage<SerialPorts.Found> first = ports.search();
        CompletionStage<SerialPorts.Found> second = ports.search();
        assertThat(first.toCompletableFuture()).isNotDone().isSameAs(second.toCompletableFuture());

        SerialPorts.Found answer = new SerialPorts.Found(List.of(new SerialPorts.Entry("COM3", "bridge")), "");
        slowSystem.complete(answer);
        assertThat(first.toCompletableFuture().join()).isEqualTo(answer);
        assertThat(ports.search().toCompletableFuture().join()).isEqualTo(answer);
    }

    @Test
    void aFaultInTheSearchBecomesASentence() {
        SerialPorts ports = new SerialPorts(() -> {
            throw new IllegalStateException("planted");
        });

        assertThat(ports.search().toCompletableFuture().join().trouble()).contains("could not be listed");
    }

    @Test
    void aComputerThatCannotLoadTheNativePartGetsASentence() throws IOException {
        Process computer = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Djava.io.tmpdir=/proc/nowhere",
                        "-Duser.home=/proc/nowhere",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SerialPortsProbe.class.getName())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String said = new String(computer.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);

        assertThat(said.lines().toList())
                .hasSize(2)
                .allSatisfy(line -> assertThat(line)
                        .contains("Serial lines cannot be used")
                        .contains("/proc/nowhere")
                        .contains("-DjSerialComm.library.path="));
    }
}
