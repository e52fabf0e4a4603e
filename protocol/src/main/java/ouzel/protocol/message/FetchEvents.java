package ouzel.protocol.message;

/**
 * Asks for events still kept on board.
 *
 * @param from the first event number wanted, unsigned 32 bits
 */
public record FetchEvents(long from) implements Order {

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public FetchEvents {
        Checks.unsigned32("from", from);
    }
}
