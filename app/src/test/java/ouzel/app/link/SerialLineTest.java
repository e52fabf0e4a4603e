package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ouzel.protocol.frame.FrameEncoder;

class SerialLineTest {
    private static final long SECOND = 1_000_000_000L;

    @TempDir
    private Path folder;

    private final LinkLoop loop = new LinkLoop();
    private final LineLog console = new LineLog();
    private PtyPair lines;

    @BeforeEach
    void wire() {
        lines = PtyPair.in(folder);
    }

    @AfterEach
    void end() {
        loop.close();
        lines.close();
        OuzelThreads.awaitEnd();
    }

    @Test
    void carriesFramesBothWays() {
        LineLog payload = new LineLog();
        FrameLine near = open(lines.near(), console);
        FrameLine far = open(lines.far(), payload);

        IntStream.range(0, 12).forEach(i -> near.send(Frames.longest(i)));
        payload.awaitFrames(12);
        IntStream.range(0, 12).forEach(i -> far.send(Frames.numbered(i)));
        console.awaitFrames(12);

        assertThat(payload.frames())
                .containsExactlyElementsOf(
                        IntStream.range(0, 12).mapToObj(Frames::longest).toList());
        assertThat(console.frames())
                .containsExactlyElementsOf(
                        IntStream.range(0, 12).mapToObj(Frames::numbered).toList());
    }

    @Test
    void saysItIsSerial() {
        assertThat(open(lines.near(), console).kind().isSerial()).isTrue();
        assertThat(console.events()).containsExactly("opened " + lines.near().where());
    }

    @Test
    void takesFramesThatComeOneByteAtATime() throws IOException {
        open(lines.near(), console);
        try (OutputStream far = Files.newOutputStream(lines.farFile())) {
            for (int i = 0; i < 20; i++) {
                for (byte single : FrameEncoder.encode(Frames.numbered(i))) {
                    far.write(single);
                    far.flush();
                }
            }
            console.awaitFrames(20);
        }

        assertThat(console.latestCounts().bad()).isZero();
    }

    @Test
    void takesFramesAfterTheGreetingOfAModemProgram() throws IOException {
        open(lines.near(), console);
        try (OutputStream far = Files.newOutputStream(lines.farFile())) {
            far.write("AT+GCAP\r".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
            far.write(FrameEncoder.encode(Frames.numbered(1)));
            far.flush();
            console.awaitFrames(1);
        }

        assertThat(console.frames()).containsExactly(Frames.numbered(1));
    }

    @Test
    void takesAFloodWithoutLosingAByte() {
        LineLog payload = new LineLog();
        FrameLine near = open(lines.near(), console);
        open(lines.far(), payload);
        AtomicInteger sent = new AtomicInteger();

        // Eight at a time, so that the queue of sixteen never overflows.
        while (sent.get() < 800) {
            IntStream.range(0, 8).forEach(i -> near.send(Frames.longest(sent.getAndIncrement())));
            payload.awaitFrames(sent.get());
        }

        assertThat(near.dropped()).isZero();
        assertThat(payload.latestCounts().bad()).isZero();
    }

    @Test
    void sendsAtOnceWhileTheFarEndIsSilent() {
        long[] sentNanos = new long[200];
        LineLog payload = new LineLog();
        FrameLine near = open(lines.near(), console);
        open(lines.far(), payload);

        for (int i = 0; i < sentNanos.length; i++) {
            sentNanos[i] = loop.nowNanos();
            near.send(Frames.numbered(i));
            payload.awaitFrames(i + 1);
        }

        // A channel that writes only between two blocking reads has a median of 50 ms here.
        long[] tookNanos = IntStream.range(0, sentNanos.length)
                .mapToLong(i -> payload.times().get(i) - sentNanos[i])
                .sorted()
                .toArray();
        assertThat(tookNanos[tookNanos.length / 2]).isLessThan(20_000_000);
    }

    @Test
    void aPulledPlugIsToldWithinASecond() {
        open(lines.near(), console);
        long pulledNanos = System.nanoTime();

        lines.pull();

        assertThat(console.await("lost")).contains("is gone. Check the plug and the cable.");
        assertThat(System.nanoTime() - pulledNanos).isLessThan(SECOND);
    }

    @Test
    void aFarEndThatStopsReadingIsGivenUpWithinTwoSeconds() {
        FrameLine near = open(lines.near(), console);
        AtomicInteger sent = new AtomicInteger();
        LinkLoop.Appointment chatter =
                loop.every(Duration.ofMillis(1), () -> near.send(Frames.longest(sent.getAndIncrement() & 0xFFFF)));

        assertThat(console.await("lost")).contains("has taken no bytes for 1.0 s");
        chatter.cancel();
        assertThat(near.dropped()).isPositive();
        near.close().toCompletableFuture().join();
    }

    @Test
    void closingIsQuickEvenWhileAWriteIsStuck() {
        FrameLine near = open(lines.near(), console);
        loop.every(Duration.ofMillis(1), () -> near.send(Frames.longest(1)));
        Awaitility.await().until(() -> near.dropped() > 0);

        long startNanos = System.nanoTime();
        near.close().toCompletableFuture().join();

        assertThat(System.nanoTime() - startNanos).isLessThan(SECOND);
        assertThat(console.events()).hasSize(1);
    }

    @Test
    void aClosedPortCanBeOpenedAgainAtOnceAndOften() {
        for (int i = 0; i < 10; i++) {
            LineLog log = new LineLog();
            FrameLine line = open(lines.near(), log);
            line.close().toCompletableFuture().join();
        }

        open(lines.near(), console);
        assertThat(console.events()).hasSize(1);
    }

    @Test
    void closingTheLoopGivesThePortBack() {
        open(lines.near(), console);

        loop.close();

        OuzelThreads.awaitEnd();
        try (LinkLoop another = new LinkLoop()) {
            LineLog log = new LineLog();
            FrameLine.connect(another, lines.near(), log);
            assertThat(log.await("opened")).contains(lines.near().where());
        }
    }

    @Test
    void closingWhileOpeningLeavesNothingOpen() {
        for (int i = 0; i < 20; i++) {
            FrameLine line = FrameLine.connect(loop, lines.near(), new LineLog());
            line.close().toCompletableFuture().join();
        }

        assertThat(open(lines.near(), console).kind()).isEqualTo(LineKind.SERIAL);
    }

    @Test
    void holdsTheControlLinesLowIfAsked() {
        Port.Serial quiet = new Port.Serial(lines.near().name(), 57_600, true);

        open(quiet, console);

        assertThat(console.events()).containsExactly("opened " + quiet.where());
    }

    private FrameLine open(Port.Serial port, LineLog log) {
        FrameLine line = FrameLine.connect(loop, port, log);
        log.await("opened");
        return line;
    }
}
