package ouzel.protocol.codec;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Readings;

/**
 * Reads a body field by field, little-endian. A body that ends too early is an {@link IllegalArgumentException}, like a
 * value out of range in the record that is made from it; {@link MessageCodec} turns both into a value.
 */
final class WireReader {
    private final ByteBuffer body;

    /** Reads from the position of {@code body}, whose order is set, to its limit. */
    WireReader(ByteBuffer body) {
        this.body = body.order(ByteOrder.LITTLE_ENDIAN);
    }

    int unsigned8() {
        return need(Byte.BYTES).get() & 0xFF;
    }

    int unsigned16() {
        return need(Short.BYTES).getShort() & 0xFFFF;
    }

    long unsigned32() {
        return need(Integer.BYTES).getInt() & 0xFFFF_FFFFL;
    }

    int signed32() {
        return need(Integer.BYTES).getInt();
    }

    long any64() {
        return need(Long.BYTES).getLong();
    }

    Bytes bytes(int length) {
        byte[] value = new byte[length];
        need(length).get(value);
        return Bytes.of(value);
    }

    int reading8() {
        int value = unsigned8();
        return value == 0xFF ? Readings.ABSENT : value;
    }

    int reading16() {
        int value = unsigned16();
        return value == 0xFFFF ? Readings.ABSENT : value;
    }

    int signedReading16() {
        short value = need(Short.BYTES).getShort();
        return value == Short.MIN_VALUE ? Readings.ABSENT : value;
    }

    private ByteBuffer need(int bytes) {
        if (body.remaining() < bytes) {
            int expected = body.position() + bytes;
            throw new IllegalArgumentException(
                    "body : " + body.limit() + " bytes (expected: at least " + expected + ")");
        }
        return body;
    }
}
