package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReconnectorTest {
    private final LinkLoop loop = new LinkLoop();
    private final LineLog payload = new LineLog();
    private final LineLog console = new LineLog();

    @TempDir
    private Path folder;

    @AfterEach
    void end() {
        loop.close();
    }

    @Test
    void connectsWhenThePayloadStartsLaterAndTellsTheWaitOnce() throws IOException {
        int port = freePort();
        Reconnector line = Reconnector.start(loop, new Port.Tcp("127.0.0.1", port), console);
        console.await("failed");
        Awaitility.await().until(() -> line.tries() >= 2);

        FrameServer server = FrameServer.onThisComputer(loop, port, payload);
        console.await("opened");
        line.send(Frames.numbered(1));
        payload.awaitFrames(1);

        assertThat(console.events()).hasSize(2);
        assertThat(console.events().get(0)).contains("Nothing listens at").endsWith("Trying again by itself.");
        server.close();
    }

    @Test
    void opensAgainWhatWasLost() {
        FrameServer server = FrameServer.onThisComputer(loop, 0, payload);
        int port = server.boundPort().toCompletableFuture().join();
        Reconnector line = Reconnector.start(loop, new Port.Tcp("127.0.0.1", port), console);
        console.await("opened");

        server.close().toCompletableFuture().join();
        assertThat(console.await("lost")).endsWith("Trying again by itself.");
        FrameServer.onThisComputer(loop, port, payload);
        console.await("opened", 2);
        line.sendUrgent(Frames.numbered(2));

        payload.awaitFrames(1);
    }

    @Test
    void opensASerialLineThatIsPluggedInAgain() {
        PtyPair lines = PtyPair.in(folder);
        Port.Serial port = lines.near();
        Reconnector.start(loop, port, console);
        console.await("opened");
        lines.pull();
        console.await("lost");

        try (PtyPair again = PtyPair.again(folder)) {
            assertThat(console.await("opened", 2)).contains(again.near().where());
        }
    }

    @Test
    void dropsAndCountsWhatIsSentWhileThereIsNoLine() throws IOException {
        Reconnector line = Reconnector.start(loop, new Port.Tcp("127.0.0.1", freePort()), console);
        console.await("failed");

        line.send(Frames.numbered(1));
        line.sendUrgent(Frames.numbered(2));

        Awaitility.await().until(() -> line.dropped() == 2);
    }

    @Test
    void triesNoMoreAndSaysNoMoreOnceItIsClosed() throws IOException {
        Reconnector line = Reconnector.start(loop, new Port.Tcp("127.0.0.1", freePort()), console);
        console.await("failed");

        line.close().toCompletableFuture().join();
        loop.close();

        assertThat(console.events()).hasSize(1);
        OuzelThreads.awaitEnd();
    }

    @Test
    void closingAtOnceIsHarmless() throws IOException {
        Port.Tcp port = new Port.Tcp("127.0.0.1", freePort());
        CompletableFuture<Void> closed = new CompletableFuture<>();
        loop.execute(() -> Reconnector.start(loop, port, console).close().thenRun(() -> closed.complete(null)));

        closed.join();

        assertThat(console.events()).isEmpty();
    }

    private static int freePort() throws IOException {
        try (ServerSocket probe = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return probe.getLocalPort();
        }
    }
}
