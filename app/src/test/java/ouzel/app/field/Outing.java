package ouzel.app.field;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.awaitility.Awaitility;
import ouzel.app.desk.Act;
import ouzel.app.desk.DeskState;
import ouzel.app.exit.Refusal;
import ouzel.app.flight.LiveDesk;
import ouzel.app.flight.PayloadHost;
import ouzel.app.link.Port;
import ouzel.protocol.session.PairingKey;

/** A live desk on a serial line, and the simulated payload that a cable can lead to. */
final class Outing implements AutoCloseable {
    static final PairingKey KEY = PairingKey.of(key());

    private static final Pattern PORT = Pattern.compile("TCP port (\\d+)");
    private static final Duration PATIENCE = Duration.ofSeconds(15);

    private final PayloadHost payload;
    private final int payloadPort;
    private final Path folder;
    private LiveDesk desk;

    /** A payload that waits for a cable; what is recorded goes to {@code folder}. */
    Outing(Path folder) {
        this.folder = folder;
        CompletableFuture<String> said = new CompletableFuture<>();
        payload = new PayloadHost(new PayloadHost.Request(Optional.empty(), 0, false, KEY, 7), said::complete);
        Matcher port = PORT.matcher(said.join());
        port.find();
        payloadPort = Integer.parseInt(port.group(1));
    }

    private static byte[] key() {
        byte[] key = new byte[PairingKey.LENGTH];
        key[0] = 42;
        return key;
    }

    int payloadPort() {
        return payloadPort;
    }

    /** Opens a desk on {@code port}. */
    Outing openDesk(Port port) throws Refusal {
        desk = new LiveDesk(
                new LiveDesk.Request(Optional.of(port), KEY, true, 1, folder, "landfill edge", "test"), cue -> {});
        return this;
    }

    LiveDesk desk() {
        return desk;
    }

    DeskState state() {
        return desk.latest();
    }

    List<String> notes() {
        return state().notes().stream().map(note -> note.sentence()).toList();
    }

    Outing act(Act act) {
        desk.act(act);
        return this;
    }

    /** Waits until the desk's state is so, and tells how long that took, ms. */
    long await(String what, Predicate<DeskState> isSo) {
        long start = System.nanoTime();
        Awaitility.await(what)
                .atMost(PATIENCE)
                .pollInterval(Duration.ofMillis(2))
                .pollDelay(Duration.ZERO)
                .until(() -> isSo.test(desk.latest()));
        return (System.nanoTime() - start) / 1_000_000;
    }

    long awaitFresh() {
        return await("a fresh status", DeskState::isLinkFresh);
    }

    @Override
    public void close() {
        if (desk != null) {
            desk.close();
        }
        payload.close();
    }
}
