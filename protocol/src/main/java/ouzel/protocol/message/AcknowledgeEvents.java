package ouzel.protocol.message;

/**
 * The console has all events up to and including {@code upTo} safely recorded; the payload may forget them.
 *
 * @param upTo event number, unsigned 32 bits
 */
public record AcknowledgeEvents(long upTo) implements Order {

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public AcknowledgeEvents {
        Checks.unsigned32("upTo", upTo);
    }
}
