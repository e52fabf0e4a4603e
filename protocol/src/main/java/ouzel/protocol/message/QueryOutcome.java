package ouzel.protocol.message;

/**
 * Asks what became of an earlier order; the answer is its stored {@link Outcome}, or one of stage
 * {@link Outcome.Stage#NEVER_SEEN}.
 *
 * @param orderId the order asked about, unsigned 32 bits
 */
public record QueryOutcome(long orderId) implements Order {

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public QueryOutcome {
        Checks.unsigned32("orderId", orderId);
    }
}
