package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class TcpLineTest {
    private final AtomicLong clockShift = new AtomicLong();
    private final LinkLoop loop = new LinkLoop(() -> System.nanoTime() + clockShift.get());
    private final LineLog payload = new LineLog();
    private final FrameServer server = FrameServer.onThisComputer(loop, 0, payload);
    private final LineLog console = new LineLog();

    @AfterEach
    void end() {
        loop.close();
    }

    @Test
    void carriesFramesBothWays() {
        FrameLine line = connect(console);
        IntStream.range(0, 10).forEach(i -> line.send(Frames.numbered(i)));
        payload.awaitFrames(10);
        IntStream.range(0, 10).forEach(i -> server.send(Frames.longest(i)));
        console.awaitFrames(10);

        assertThat(payload.frames())
                .containsExactlyElementsOf(
                        IntStream.range(0, 10).mapToObj(Frames::numbered).toList());
        assertThat(console.frames())
                .containsExactlyElementsOf(
                        IntStream.range(0, 10).mapToObj(Frames::longest).toList());
        assertThat(line.dropped() + server.dropped()).isZero();
    }

    @Test
    void saysWhenNobodyListens() throws IOException {
        int freePort = freePort();

        FrameLine.connect(loop, new Port.Tcp("127.0.0.1", freePort), console);

        assertThat(console.await("failed"))
                .isEqualTo("failed Nothing listens at 127.0.0.1:" + freePort
                        + ". Start the payload there, or check the port number.");
    }

    @Test
    void saysWhenTheNameOfTheComputerIsUnknown() {
        FrameLine.connect(loop, new Port.Tcp("nobody.invalid", 5_760), console);

        assertThat(console.await("failed")).contains("No computer is known by the name in nobody.invalid:5760");
    }

    @Test
    void tellsBothEndsWhenOneLeaves() {
        FrameLine line = connect(console);
        payload.await("opened");

        line.close();

        assertThat(payload.await("lost")).contains("was closed by the far end");
        assertThat(console.events()).hasSize(1);
    }

    @Test
    void turnsASecondConsoleAwayWhileTheFirstSpeaks() {
        connect(console);
        LineLog second = new LineLog();
        FrameLine.connect(loop, portOfServer(), second);

        assertThat(second.await("lost")).contains("was closed by the far end");
        assertThat(payload.await("failed"))
                .contains("A second console at 127.0.0.1:")
                .contains("was turned away");
        server.send(Frames.numbered(1));
        console.awaitFrames(1);
    }

    @Test
    void givesThePlaceOfASilentConsoleToTheNext() {
        connect(console);
        payload.await("opened");
        clockShift.addAndGet(Duration.ofSeconds(6).toNanos());

        LineLog second = new LineLog();
        FrameLine.connect(loop, portOfServer(), second);
        payload.await("opened", 2);
        server.send(Frames.numbered(1));

        second.awaitFrames(1);
        assertThat(payload.await("lost")).contains("silent for 5 s");
        assertThat(console.await("lost")).contains("was closed by the far end");
    }

    @Test
    void saysWhenThePortNumberIsTaken() {
        FrameServer.onThisComputer(loop, portOfServer().port(), console);

        assertThat(console.await("failed")).contains("port number is in use");
    }

    @Test
    void listensOnThisComputerOnlyUnlessAskedOtherwise() throws IOException {
        FrameServer open = FrameServer.onAllNetworks(loop, 0, new LineLog());
        int port = open.boundPort().toCompletableFuture().join();

        InetAddress other = InetAddress.getByName("127.0.0.2");
        try (Socket reached = new Socket(other, port)) {
            assertThat(reached.isConnected()).isTrue();
        }
        FrameLine.connect(loop, new Port.Tcp("127.0.0.2", portOfServer().port()), console);
        assertThat(console.await("failed")).contains("Nothing listens at 127.0.0.2");
    }

    @Test
    void closingGivesThePortNumberBack() {
        int port = portOfServer().port();
        connect(console);

        server.close().toCompletableFuture().join();

        console.await("lost");
        FrameServer again = FrameServer.onThisComputer(loop, port, payload);
        assertThat(again.boundPort().toCompletableFuture().join()).isEqualTo(port);
    }

    @Test
    void leavesNoThreadBehind() {
        connect(console);

        loop.close();

        OuzelThreads.awaitEnd();
    }

    private FrameLine connect(LineLog log) {
        FrameLine line = FrameLine.connect(loop, portOfServer(), log);
        log.await("opened");
        return line;
    }

    private Port.Tcp portOfServer() {
        return new Port.Tcp(
                "127.0.0.1", server.boundPort().toCompletableFuture().join());
    }

    private static int freePort() throws IOException {
        try (ServerSocket probe = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return probe.getLocalPort();
        }
    }
}
