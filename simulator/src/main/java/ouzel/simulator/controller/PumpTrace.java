package ouzel.simulator.controller;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ouzel.protocol.message.CurrentTrace;
import ouzel.protocol.message.Sampler;

/** Samples a pump's current at each step while it runs and for half a second after, and sends it in batches. */
final class PumpTrace {
    private static final int BATCH = 10;
    private static final int AFTER_MILLIS = 500;
    private static final int GREATEST_MILLIAMPS = 0xFFFE;

    private final Outbox outbox;
    private final List<Integer> batch = new ArrayList<>(BATCH);
    private Optional<Sampler> recorded = Optional.empty();
    private long firstSample;
    private long untilMillis;

    PumpTrace(Outbox outbox) {
        this.outbox = outbox;
    }

    void step(Optional<Sampler> running, Instruments instruments, long nowMillis) {
        if (running.isPresent()) {
            if (!running.equals(recorded)) {
                flush();
                recorded = running;
                firstSample = 0;
            }
            untilMillis = nowMillis + AFTER_MILLIS;
        } else if (recorded.isPresent() && nowMillis > untilMillis) {
            flush();
            recorded = Optional.empty();
        }
        recorded.ifPresent(sampler -> sample(instruments.pumpMilliamps(sampler)));
    }

    /** A pump was switched on: a trace that still runs on ends here, even if it is the same pump's. */
    void restart() {
        flush();
        recorded = Optional.empty();
    }

    private void sample(int milliamps) {
        batch.add(Math.max(0, Math.min(milliamps, GREATEST_MILLIAMPS)));
        if (batch.size() == BATCH) {
            flush();
        }
    }

    private void flush() {
        if (!batch.isEmpty()) {
            outbox.add(new CurrentTrace(recorded.orElseThrow(), firstSample, batch));
            firstSample += batch.size();
            batch.clear();
        }
    }
}
