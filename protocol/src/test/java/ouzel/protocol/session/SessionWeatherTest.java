package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Trigger;

/** Both ends in bad radio weather: frames are lost, repeated, delayed and overtaken, from a seed. */
class SessionWeatherTest {
    private static final int STEP_MILLIS = 50;

    /** A frame under way. */
    private record Flight(Frame frame, boolean up, long arrivesAtNanos) {}

    private final List<Flight> air = new ArrayList<>();
    private final Set<Long> counters = new HashSet<>();

    @Property(tries = 150)
    void opensThroughLossRepetitionAndDelay(@ForAll long seed) {
        air.clear();
        counters.clear();
        Random random = new Random(seed);
        Bench bench = new Bench(0);

        for (int step = 0; step < 1_200 && !bench.console.isOpen(); step++) {
            step(bench, random, 0.4);
        }

        assertThat(bench.console.isOpen()).isTrue();
        assertThat(bench.console.session()).isEqualTo(bench.payload.session());
    }

    @Property(tries = 200)
    void noCounterIsBelievedTwiceAndEveryRestartIsFollowedByANewSession(@ForAll long seed) {
        air.clear();
        counters.clear();
        Random random = new Random(seed);
        Bench bench = new Bench();
        for (int step = 0; step < 400; step++) {
            if (bench.console.isOpen() && step % 3 == 0) {
                Order order = new Trigger(Sampler.WATER, step);
                send(bench.console.seal(order, step + 1, 1_000, bench.nowNanos), true, bench, random, 0.2);
            }
            if (step == 200) {
                bench.restartPayload();
            }
            step(bench, random, 0.2);
        }
        for (int step = 0; step < 200; step++) {
            step(bench, random, 0);
        }
        assertThat(bench.console.session()).isEqualTo(bench.payload.session()).isNotZero();
    }

    private void step(Bench bench, Random random, double loss) {
        bench.pass(STEP_MILLIS);
        bench.tick().forEach(frame -> send(frame, true, bench, random, loss));
        send(bench.down(bench.status(bench.payload.session())), false, bench, random, loss);
        for (Flight flight : List.copyOf(air)) {
            if (flight.arrivesAtNanos() - bench.nowNanos <= 0) {
                air.remove(flight);
                land(flight, bench, random, loss);
            }
        }
    }

    private void land(Flight flight, Bench bench, Random random, double loss) {
        if (!flight.up()) {
            bench.consoleHears(flight.frame());
            return;
        }
        Verdict verdict = bench.payload.hear(flight.frame());
        if (verdict instanceof Verdict.Reply reply) {
            send(bench.down(reply.message()), false, bench, random, loss);
        } else if (verdict instanceof Verdict.Verified verified) {
            long once = bench.payload.session() << 32 | verified.envelope().counter();
            assertThat(counters.add(once))
                    .as("counter %d", verified.envelope().counter())
                    .isTrue();
        }
    }

    private void send(Frame frame, boolean up, Bench bench, Random random, double loss) {
        int copies = random.nextDouble() < loss ? 0 : random.nextDouble() < loss / 2 ? 2 : 1;
        for (int i = 0; i < copies; i++) {
            air.add(new Flight(frame, up, bench.nowNanos + random.nextInt(300) * 1_000_000L));
        }
    }
}
