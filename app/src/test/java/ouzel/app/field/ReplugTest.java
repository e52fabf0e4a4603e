package ouzel.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import ouzel.app.desk.Act;
import ouzel.app.desk.Phase;
import ouzel.app.exit.Refusal;
import ouzel.protocol.message.Sampler;

/** The plug comes out and goes in again, while the payload lives on. */
class ReplugTest {
    private static final Logger LOG = LoggerFactory.getLogger(ReplugTest.class);
    /** The console finds its payload again within this time of the port's return, ms. */
    private static final long LONGEST_RETURN_MILLIS = 2_000;
    /** Plugs in and out so often; {@code -Dfield.cycles=100} for the long run. */
    private static final int CYCLES = Integer.getInteger("field.cycles", 15);

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
    void thePayloadIsFoundAgainUnderTheSameName() throws Refusal {
        connect("line0");
        pullAndNotice();

        cable.plug("line0");

        assertThat(outing.awaitFresh()).isLessThan(LONGEST_RETURN_MILLIS);
    }

    @Test
    void thePayloadIsFoundAgainUnderAnotherName() throws Refusal {
        cable.plug("line0");
        outing.openDesk(cable.anywhere()).awaitFresh();
        pullAndNotice();

        cable.plug("line7");

        assertThat(outing.awaitFresh()).isLessThan(LONGEST_RETURN_MILLIS);
        assertThat(outing.state().line().sentence()).contains("line7");
    }

    @Test
    void aSearchFindsThePayloadAmongLinesThatAreSilent() throws Refusal {
        try (FarEnd silent = new FarEnd();
                Cable other = new Cable(folder, silent.port())) {
            other.plug("line1");
            outing.openDesk(cable.anywhere());
            Awaitility.await("a greeting").until(() -> !silent.heard().isEmpty());

            cable.plug("line2");

            assertThat(outing.awaitFresh()).isLessThan(LONGEST_RETURN_MILLIS);
            assertThat(outing.state().line().sentence()).contains("line2");
        }
    }

    @Test
    void anArmedSamplerIsUnknownWithoutThePlugAndSafeAfterwards() throws Refusal {
        connect("line0");
        armAir();

        pullAndNotice();
        assertThat(outing.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.UNKNOWN);
        long session = outing.state().session().number();
        Awaitility.await().pollDelay(Duration.ofMillis(1_700)).until(() -> true);
        cable.plug("line0");
        outing.awaitFresh();

        assertThat(outing.state().session().number()).isNotEqualTo(session);
        assertThat(outing.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.SAFE);
        outing.await("the record of the disarming", state -> notes("Disarmed on board"));
    }

    @Test
    void aRunningPumpIsUnknownWithoutThePlugAndItsEndIsRecoveredAfterwards() throws Refusal {
        connect("line0");
        armAir();
        outing.act(new Act.Trigger(Sampler.AIR));
        outing.await("a running pump", state -> state.lane(Sampler.AIR).phase().isActing());

        pullAndNotice();
        assertThat(outing.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.UNKNOWN);
        cable.plug("line0");

        assertThat(outing.awaitFresh()).isLessThan(LONGEST_RETURN_MILLIS);
        outing.await("what became of it", state -> state.lane(Sampler.AIR).phase() != Phase.UNKNOWN);
        assertThat(outing.state().lane(Sampler.AIR).phase()).isNotEqualTo(Phase.ARMED);
        assertThat(outing.state().lane(Sampler.AIR).phase()).isNotEqualTo(Phase.SAFE);
        outing.act(new Act.SafeAll());
        outing.await("the end", state -> !state.lane(Sampler.AIR).phase().isActing());
    }

    @Test
    void manyCyclesLeakNoThreadAndNoDescriptor() throws Refusal {
        connect("line0");
        cycle();
        int threads = threads();
        int descriptors = descriptors();

        List<Long> returns = new ArrayList<>();
        for (int i = 0; i < CYCLES; i++) {
            returns.add(cycle());
        }

        Collections.sort(returns);
        LOG.info(
                "{} cycles: back after {} / {} / {} ms (least, median, most); threads {} -> {}, descriptors {} -> {}",
                CYCLES,
                returns.get(0),
                returns.get(CYCLES / 2),
                returns.get(CYCLES - 1),
                threads,
                threads(),
                descriptors,
                descriptors());
        assertThat(returns.get(CYCLES - 1)).isLessThan(LONGEST_RETURN_MILLIS);
        Awaitility.await("as many threads as before").until(() -> threads() <= threads);
        Awaitility.await("as many descriptors as before").until(() -> descriptors() <= descriptors);
    }

    private long cycle() {
        pullAndNotice();
        cable.plug("line0");
        return outing.awaitFresh();
    }

    private void connect(String name) throws Refusal {
        cable.plug(name);
        outing.openDesk(cable.port(name)).awaitFresh();
    }

    private void armAir() {
        outing.await(
                "air that may be armed",
                state -> outing.state().lane(Sampler.AIR).phase() == Phase.SAFE);
        Awaitility.await("an armed sampler").until(() -> {
            outing.act(new Act.Arm(Sampler.AIR));
            return outing.state().lane(Sampler.AIR).phase() == Phase.ARMED;
        });
    }

    private void pullAndNotice() {
        cable.pull();
        assertThat(outing.await("the loss", state -> !state.line().up())).isLessThan(1_000);
        assertThat(outing.state().session().open()).isFalse();
    }

    private boolean notes(String start) {
        return outing.notes().stream().anyMatch(note -> note.startsWith(start));
    }

    private static int threads() {
        return (int) Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().startsWith("ouzel"))
                .count();
    }

    private static int descriptors() {
        return new File("/proc/self/fd").list().length;
    }
}
