package ouzel.protocol.session;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Open;

/**
 * Nonces that never repeat in a payload's life, even if its random source is poor: start count, count since start, and
 * eight random bytes that nobody can foretell.
 *
 * <p><b>Thread:</b> one at a time.
 */
public final class NonceSource implements Supplier<Bytes> {
    private final long bootCount;
    private final LongSupplier random;
    private int count;

    /** A source for the {@code bootCount}th start of a payload; {@code random} gives 64 unpredictable bits. */
    public NonceSource(long bootCount, LongSupplier random) {
        this.bootCount = bootCount;
        this.random = random;
    }

    /** The next nonce, {@value Open#NONCE_LENGTH} bytes. */
    @Override
    public Bytes get() {
        count++;
        return Bytes.of(ByteBuffer.allocate(Open.NONCE_LENGTH)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt((int) bootCount)
                .putInt(count)
                .putLong(random.getAsLong())
                .array());
    }
}
