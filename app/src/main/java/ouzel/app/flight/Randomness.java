package ouzel.app.flight;

import java.security.SecureRandom;
import java.util.function.Supplier;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Open;

/**
 * Unpredictable numbers for live sessions.
 *
 * <p><b>Thread:</b> any.
 */
final class Randomness {
    private static final SecureRandom SOURCE = new SecureRandom();

    private Randomness() {}

    static long next() {
        return SOURCE.nextLong();
    }

    static Supplier<Bytes> nonces() {
        return () -> {
            byte[] nonce = new byte[Open.NONCE_LENGTH];
            SOURCE.nextBytes(nonce);
            return Bytes.of(nonce);
        };
    }

    /** Where a desk's order ids start: 1 to 2^31 - 1. */
    static long firstOrderId() {
        return 1 + SOURCE.nextInt(Integer.MAX_VALUE - 1);
    }
}
