package ouzel.simulator.controller;

import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;

/** Writes down what happens and says it at once; what is written survives loss of power. */
final class Recorder {
    private static final long UNSIGNED_32 = 0xFFFF_FFFFL;

    private final NonVolatile memory;
    private final Outbox outbox;

    Recorder(NonVolatile memory, Outbox outbox) {
        this.memory = memory;
        this.outbox = outbox;
    }

    /** Keeps an event of a sampler until it is acknowledged. */
    void event(Event.Kind kind, Sampler sampler, long orderId, Reason reason, int value, long nowMillis) {
        outbox.add(memory.events()
                .add(new Event(0, memory.bootCount(), nowMillis & UNSIGNED_32, kind, sampler, orderId, reason, value)));
    }

    /** Keeps an event of the whole payload until it is acknowledged. */
    void event(Event.Kind kind, long orderId, Reason reason, int value, long nowMillis) {
        event(kind, Sampler.WATER, orderId, reason, value, nowMillis);
    }

    /** Stores how far an order came, and says so. */
    void outcome(Outcome outcome) {
        memory.outcomes().put(outcome);
        answer(outcome);
    }

    /** Says how far an order came; order 0 is nobody's and gets no outcome. */
    void answer(Outcome outcome) {
        if (outcome.orderId() != 0) {
            outbox.add(outcome);
        }
    }
}
