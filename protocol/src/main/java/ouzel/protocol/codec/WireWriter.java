package ouzel.protocol.codec;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Readings;

/**
 * Writes a body field by field, little-endian. Values are taken modulo their width: the records have checked them, and
 * readings, which nobody checks, are brought to the nearest value that the wire can say.
 */
final class WireWriter {
    private final ByteBuffer body = ByteBuffer.allocate(Frame.LONGEST_BODY).order(ByteOrder.LITTLE_ENDIAN);

    void unsigned8(int value) {
        body.put((byte) value);
    }

    void unsigned16(int value) {
        body.putShort((short) value);
    }

    void unsigned32(long value) {
        body.putInt((int) value);
    }

    void signed32(int value) {
        body.putInt(value);
    }

    void any64(long value) {
        body.putLong(value);
    }

    void bytes(Bytes value) {
        body.put(value.toArray());
    }

    /** A reading of 0 to 254, or 255 for absent. */
    void reading8(int value) {
        unsigned8(value == Readings.ABSENT ? 0xFF : Math.max(0, Math.min(0xFE, value)));
    }

    /** A reading of 0 to 65 534, or 65 535 for absent. */
    void reading16(int value) {
        unsigned16(value == Readings.ABSENT ? 0xFFFF : Math.max(0, Math.min(0xFFFE, value)));
    }

    /** A reading of -32 767 to 32 767, or -32 768 for absent. */
    void signedReading16(int value) {
        unsigned16(
                value == Readings.ABSENT
                        ? Short.MIN_VALUE
                        : Math.max(Short.MIN_VALUE + 1, Math.min(Short.MAX_VALUE, value)));
    }

    byte[] toArray() {
        return Arrays.copyOf(body.array(), body.position());
    }
}
