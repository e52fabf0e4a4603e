package ouzel.app.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.Refusal;
import ouzel.app.flight.LinkTest;
import ouzel.app.link.Port;
import ouzel.protocol.session.PairingKey;

/** The check of the link before a flight, over a real terminal line and over TCP. */
class LinkTestTest {
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
    void aGoodLineIsGoodEnough() throws Refusal {
        cable.plug("line0");

        LinkTest.Result result = LinkTest.run(cable.port("line0"), Outing.KEY, 3);

        assertThat(result.shortcomings()).isEmpty();
        assertThat(result.health().deliveryLow()).isGreaterThan(0.9);
        assertThat(result.health().roundTripHighMillis()).isBetween(1.0, 500.0);
        assertThat(result.health().airTimeShare()).isBetween(0.1, 0.6);
        assertThat(result.asked()).isGreaterThan(5);
    }

    @Test
    void aLineThatBreaksIsNot() throws Refusal {
        cable.plug("line0");
        CompletableFuture<Void> pulled = CompletableFuture.runAsync(() -> {
            Awaitility.await("a second of the test")
                    .pollDelay(java.time.Duration.ofSeconds(1))
                    .until(() -> true);
            cable.pull();
            cable.plug("line0");
        });

        LinkTest.Result result = LinkTest.run(cable.port("line0"), Outing.KEY, 4);

        pulled.join();
        assertThat(result.breaks()).isPositive();
        assertThat(result.isGoodEnough()).isFalse();
    }

    @Test
    void aPayloadWithAnotherKeyIsNamedAsSuch() {
        Port tcp = new Port.Tcp("127.0.0.1", outing.payloadPort());

        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> LinkTest.run(tcp, PairingKey.rehearsal(), 3))
                .satisfies(refusal -> assertThat(refusal.exitCode()).isEqualTo(ExitCode.WRONG_KEY));
    }

    @Test
    void aLineThatIsNotThereIsNamedAsSuch() {
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> LinkTest.run(cable.port("line9"), Outing.KEY, 3))
                .withMessageContaining("line9 is not there")
                .satisfies(refusal -> assertThat(refusal.exitCode()).isEqualTo(ExitCode.PORT_MISSING));
    }
}
