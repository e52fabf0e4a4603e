package ouzel.app.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class LinkLoopTest {
    private final LinkLoop loop = new LinkLoop();

    @AfterEach
    void end() {
        loop.close();
    }

    @Test
    void runsWorkInTurnOnOneThread() {
        List<Integer> done = new CopyOnWriteArrayList<>();
        CompletableFuture<Boolean> last = new CompletableFuture<>();
        for (int i = 0; i < 100; i++) {
            int number = i;
            loop.execute(() -> done.add(number));
        }
        loop.execute(() -> last.complete(loop.isHere()));

        assertThat(last.join()).isTrue();
        assertThat(done).hasSize(100).isSorted();
        assertThat(loop.isHere()).isFalse();
    }

    @Test
    void aFaultEndsOnlyItsOwnTurn() {
        AtomicInteger turns = new AtomicInteger();
        LinkLoop.Appointment rounds = loop.every(Duration.ofMillis(1), () -> {
            if (turns.incrementAndGet() == 2) {
                throw new IllegalStateException("planted");
            }
        });

        Awaitility.await().until(() -> turns.get() > 10);
        rounds.cancel();
    }

    @Test
    void aCancelledAppointmentIsNotKept() {
        AtomicInteger turns = new AtomicInteger();
        loop.after(Duration.ofMillis(50), turns::incrementAndGet).cancel();
        CompletableFuture<Void> later = new CompletableFuture<>();
        loop.after(Duration.ofMillis(80), () -> later.complete(null));

        later.join();

        assertThat(turns).hasValue(0);
    }

    @Test
    void roundsEndWhenTheyAreCancelled() {
        AtomicInteger turns = new AtomicInteger();
        LinkLoop.Appointment rounds = loop.every(Duration.ofMillis(1), turns::incrementAndGet);
        Awaitility.await().until(() -> turns.get() > 2);
        CompletableFuture<Integer> atCancel = new CompletableFuture<>();
        loop.execute(() -> {
            rounds.cancel();
            atCancel.complete(turns.get());
        });
        CompletableFuture<Void> later = new CompletableFuture<>();
        loop.after(Duration.ofMillis(30), () -> later.complete(null));

        later.join();

        assertThat(turns).hasValue(atCancel.join());
    }

    @Test
    void refusesToWaitForItself() {
        CompletableFuture<Void> closing = CompletableFuture.runAsync(loop::close, loop);

        assertThatIllegalStateException()
                .isThrownBy(() -> {
                    try {
                        closing.join();
                    } catch (java.util.concurrent.CompletionException wrapped) {
                        throw (IllegalStateException) wrapped.getCause();
                    }
                })
                .withMessageContaining("thread : link");
    }

    @Test
    void leavesWorkOutOnceItIsClosed() {
        loop.close();
        AtomicInteger turns = new AtomicInteger();

        loop.execute(turns::incrementAndGet);

        assertThat(turns).hasValue(0);
        OuzelThreads.awaitEnd();
    }
}
