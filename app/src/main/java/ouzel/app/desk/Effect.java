package ouzel.app.desk;

import ouzel.protocol.message.Order;

/** Something the fold wants done by the shell around it. */
public sealed interface Effect {
    /**
     * Seal and send an order.
     *
     * @param orderId the order's id, 0 if it gets no outcome
     * @param order what is asked
     * @param lifeMillis how long it may act after it leaves, on the payload's clock
     * @param urgency how it is to leave
     */
    record Send(long orderId, Order order, long lifeMillis, Urgency urgency) implements Effect {}

    /** How an order leaves the console. */
    enum Urgency {
        /** Only after all that led to it is safely in the journal. */
        DURABLE_FIRST,
        /** In turn. */
        IN_TURN,
        /** Ahead of everything that waits. */
        AHEAD
    }

    /** Make a sound. */
    record Sound(Cue cue) implements Effect {}

    /** What the desk can say by sound. */
    enum Cue {
        /** A sampler is armed. */
        ARMED,
        /** A draw or stroke began. */
        STARTED,
        /** A draw or stroke completed. */
        COMPLETED,
        /** Something needs the operator's eyes. */
        ATTENTION
    }
}
