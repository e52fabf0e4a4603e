package ouzel.app.desk;

import ouzel.protocol.message.Sampler;

/** Something the operator did, as meant: the screen's keys and clicks are already told apart. */
public sealed interface Act {
    /** Arm one sampler for its planned dose. */
    record Arm(Sampler sampler) implements Act {}

    /** The trigger control was held for its whole time. */
    record Trigger(Sampler sampler) implements Act {}

    /** End what one sampler is doing. */
    record Stop(Sampler sampler) implements Act {}

    /** Everything off, from anywhere. */
    record SafeAll() implements Act {}

    /** A fresh container, bag or probe tip is fitted. */
    record Reload(Sampler sampler) implements Act {}

    /**
     * Ask for another amount next time.
     *
     * @param dose in the unit of {@link ouzel.protocol.message.Arm#dose()}
     */
    record SetDose(Sampler sampler, int dose) implements Act {}

    /**
     * A named person confirms what cannot be measured.
     *
     * @param condition what is confirmed
     * @param person who said it
     */
    record Attest(Condition condition, String person) implements Act {}

    /** The operator has seen a pinned note. */
    record Acknowledge(long note) implements Act {}

    /**
     * Open a session again after it ended for good, as when another console had taken the payload over; whoever has it
     * now loses it.
     */
    record Reconnect() implements Act {}
}
