package ouzel.simulator.controller;

import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Reason;

/**
 * A permissive that does not hold.
 *
 * @param permissive which
 * @param measured what was measured, in its unit; {@link ouzel.protocol.message.Readings#ABSENT} if there is no value
 * @param limit the limit it was held against; a measured value inside it has not lasted long enough yet
 */
record Unmet(Permissive permissive, int measured, int limit) {

    /** The outcome of the order that this ended. */
    Outcome failed(long orderId) {
        return new Outcome(orderId, Outcome.Stage.FAILED, Reason.PERMISSIVE, permissive.code(), measured, limit, 0, 0);
    }

    /** The outcome of the order that this kept from being carried out. */
    Outcome refused(long orderId) {
        return Outcome.unmet(orderId, permissive, measured, limit);
    }
}
