package ouzel.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ouzel.app.exit.Refusal;
import ouzel.app.testing.Needs;

/** Ports that are busy or not there, and a computer whose port library cannot unpack its native part. */
class TroubledPortTest {
    @TempDir
    private Path folder;

    private Outing outing;
    private Cable cable;

    @BeforeEach
    void start() {
        outing = new Outing(folder);
        cable = new Cable(folder, outing.payloadPort());
    }

    @AfterEach
    void end() {
        outing.close();
        cable.close();
    }

    @Test
    void aBusyLineIsSaidToBeBusyAndUsedOnceItIsFree() throws Refusal, IOException {
        Needs.tool("flock");
        cable.plug("line0");
        Process other = new ProcessBuilder("flock", cable.port("line0").name(), "cat").start();
        other.getOutputStream().write('x');
        other.getOutputStream().flush();
        assertThat(other.getInputStream().read()).isEqualTo('x');
        outing.openDesk(cable.port("line0"));
        outing.await("the trouble", state -> state.line().sentence().contains("is in use by another program"));

        other.destroyForcibly();

        assertThat(outing.awaitFresh()).isLessThan(2_000);
    }

    @Test
    void aNamedLineThatIsNotThereIsWaitedForAndNoOtherIsTouched() throws Refusal {
        try (FarEnd stranger = new FarEnd();
                Cable other = new Cable(folder, stranger.port())) {
            other.plug("line1");
            outing.openDesk(cable.port("line0"));
            outing.await("the trouble", state -> state.line().sentence().contains("is not there"));

            cable.plug("line0");

            assertThat(outing.awaitFresh()).isLessThan(2_000);
            assertThat(stranger.heard()).isEmpty();
        }
    }

    @Test
    void aSearchWithoutAnyLineSaysSoAndGoesOn() throws Refusal {
        outing.openDesk(cable.anywhere());
        outing.await("words", state -> state.line().sentence().endsWith("Trying again by itself."));

        cable.plug("line3");

        assertThat(outing.awaitFresh()).isLessThan(2_000);
    }

    @Test
    void withoutTheNativePartOnlySerialLinesAreMissed() throws IOException, InterruptedException {
        String tcp = "127.0.0.1:" + outing.payloadPort();
        String out = folder.resolve("out").toString();

        assertThat(crippled("ports")).startsWith("13 ").contains("Serial lines cannot be used");
        assertThat(crippled("rehearse", "--headless", "--seed", "1", "--out", out))
                .startsWith("0 ");
        // The payload there holds another key than the rehearsal's: to hear that, TCP must work.
        assertThat(crippled("link-test", "--tcp", tcp, "--seconds", "2")).startsWith("8 ");
    }

    /** Runs the program on a computer on which no native part can be unpacked; gives its exit code and what it said. */
    private String crippled(String... words) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.io.tmpdir=/proc/nowhere",
                "-Duser.home=/proc/nowhere",
                "-cp",
                System.getProperty("java.class.path"),
                "ouzel.app.command.Main"));
        line.addAll(Arrays.asList(words));
        Process program = new ProcessBuilder(line).redirectErrorStream(true).start();
        String said = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return program.waitFor() + " " + said;
    }
}
