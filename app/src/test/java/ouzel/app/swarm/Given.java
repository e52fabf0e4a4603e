package ouzel.app.swarm;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Optional;
import ouzel.protocol.codec.Decoded;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.message.Order;

/**
 * An order as it stands in a sealed frame, read apart from the program's own code.
 *
 * @param counter the frame's counter
 * @param orderId the order's id
 * @param expiresAtMillis its expiry on the payload's clock
 * @param order what is asked
 */
record Given(long counter, long orderId, long expiresAtMillis, Order order) {
    /** What stands in {@code frame}; empty if that is no order. */
    static Optional<Given> in(Frame frame) {
        byte[] body = frame.body().toArray();
        if (body.length < SessionProof.ENVELOPE + SessionProof.TAG) {
            return Optional.empty();
        }
        byte[] fields = Arrays.copyOfRange(body, SessionProof.ENVELOPE, body.length - SessionProof.TAG);
        Decoded decoded = MessageCodec.decode(frame.header().kind(), fields);
        if (!(decoded instanceof Decoded.Known known && known.message() instanceof Order order)) {
            return Optional.empty();
        }
        ByteBuffer head = ByteBuffer.wrap(body).order(ByteOrder.LITTLE_ENDIAN);
        return Optional.of(new Given(unsigned(head.getInt()), unsigned(head.getInt()), unsigned(head.getInt()), order));
    }

    private static long unsigned(int value) {
        return value & 0xFFFF_FFFFL;
    }
}
