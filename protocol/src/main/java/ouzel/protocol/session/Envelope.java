package ouzel.protocol.session;

import ouzel.protocol.message.Order;

/**
 * An order as it travels: sealed by the console, opened by the payload.
 *
 * @param counter counts up with every frame sealed in a session, from 1, unsigned 32 bits; never repeated
 * @param orderId names the order; a retransmission keeps the id and takes a fresh counter; 0 for orders that get no
 *     outcome, unsigned 32 bits
 * @param expiresAtMillis the instant on the payload's clock after which the order must not act, unsigned 32 bits
 * @param order what is asked
 */
public record Envelope(long counter, long orderId, long expiresAtMillis, Order order) {}
