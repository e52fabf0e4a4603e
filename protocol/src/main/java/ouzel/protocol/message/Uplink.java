package ouzel.protocol.message;

/**
 * What a console says: a request to open a session, which anyone may send, or an {@link Order}, which only the holder
 * of the session key can make.
 */
public sealed interface Uplink extends Message permits Open, Order {}
