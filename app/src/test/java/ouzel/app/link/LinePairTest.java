package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.IntStream;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class LinePairTest {
    private final LinkLoop loop = new LinkLoop();
    private final LineLog console = new LineLog();
    private final LineLog payload = new LineLog();

    @AfterEach
    void end() {
        loop.close();
    }

    @Test
    void carriesFramesBothWays() {
        LinePair pair = join(Wire.PERFECT);
        IntStream.range(0, 10).forEach(i -> pair.console().send(Frames.numbered(i)));
        IntStream.range(0, 10).forEach(i -> pair.payload().send(Frames.longest(i)));
        payload.awaitFrames(10);
        console.awaitFrames(10);

        assertThat(payload.frames())
                .containsExactlyElementsOf(
                        IntStream.range(0, 10).mapToObj(Frames::numbered).toList());
        assertThat(console.frames())
                .containsExactlyElementsOf(
                        IntStream.range(0, 10).mapToObj(Frames::longest).toList());
    }

    @Test
    void aFrameSentWhileOpeningArrives() {
        LineLog eager = new LineLog();
        LinePair[] made = new LinePair[1];
        loop.execute(() -> {
            made[0] = LinePair.join(loop, eager, payload, Wire.PERFECT, Wire.PERFECT);
            loop.execute(() -> made[0].console().send(Frames.numbered(1)));
        });

        payload.awaitFrames(1);
        assertThat(eager.events()).containsExactly("opened the simulated payload");
        assertThat(payload.events()).containsExactly("opened the console");
    }

    @Test
    void isNeitherSerialNorTcp() {
        assertThat(join(Wire.PERFECT).console().kind()).isEqualTo(LineKind.IN_PROCESS);
    }

    @Test
    void theWireMayLoseCutAndDamage() {
        LinePair pair = join((bytes, farEnd) -> {
            // Delimiter, code, version, kind, payload number, then the low byte of the sequence.
            int sequence = bytes[6] & 0xFF;
            if (sequence == 2) {
                farEnd.accept(new byte[] {1, 2, 3});
            } else {
                farEnd.accept(Arrays.copyOf(bytes, 7));
                farEnd.accept(Arrays.copyOfRange(bytes, 7, bytes.length));
            }
        });
        IntStream.range(1, 5).forEach(i -> pair.console().send(Frames.numbered(i)));
        payload.awaitFrames(3);

        assertThat(payload.frames())
                .extracting(frame -> frame.header().sequence())
                .containsExactly(1, 3, 4);
    }

    @Test
    void theWireMayDeliverMuchLaterAndFromAnotherThread() {
        CopyOnWriteArrayList<Runnable> held = new CopyOnWriteArrayList<>();
        LinePair pair = join((bytes, farEnd) -> held.add(() -> farEnd.accept(bytes)));
        pair.console().send(Frames.numbered(1));
        Awaitility.await().until(() -> held.size() == 1);
        assertThat(payload.frames()).isEmpty();

        held.get(0).run();

        payload.awaitFrames(1);
    }

    @Test
    void whenOneEndClosesTheOtherIsLost() {
        LinePair pair = join(Wire.PERFECT);

        pair.payload().close().toCompletableFuture().join();

        assertThat(console.await("lost")).contains("was closed by the far end");
        assertThat(payload.events()).hasSize(1);
    }

    @Test
    void anEndWhoseOtherEndWasClosedBeforeTheStartIsLostAtOnce() {
        loop.execute(() -> LinePair.join(loop, console, payload, Wire.PERFECT, Wire.PERFECT)
                .console()
                .close());

        assertThat(payload.await("lost")).contains("was closed by the far end");
        assertThat(console.events()).isEmpty();
    }

    @Test
    void closingAtOnceIsHarmless() {
        LinePair pair = LinePair.join(loop, console, payload, Wire.PERFECT, Wire.PERFECT);

        pair.console().close().toCompletableFuture().join();
        pair.payload().close().toCompletableFuture().join();

        assertThat(console.events()).noneMatch(event -> event.startsWith("lost"));
    }

    private LinePair join(Wire up) {
        LinePair pair = LinePair.join(loop, console, payload, up, Wire.PERFECT);
        console.await("opened");
        payload.await("opened");
        return pair;
    }
}
