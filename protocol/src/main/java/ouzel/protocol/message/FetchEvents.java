package ouzel.protocol.message;

/**
 * Asks for events still kept on board.
 *
 * @param from the first event number wanted, unsigned 32 bits
 */
public record FetchEvents(long from) implements Order {
    public FetchEvents {
        Checks.unsigned32("from", from);
    }
}
