package ouzel.protocol.codec;

import java.nio.ByteBuffer;
import java.util.Optional;
import ouzel.protocol.frame.Crc16;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Message;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Settings;

/**
 * Messages to frames and back.
 *
 * <p>Orders travel in an envelope that only a session can seal and open: here are only their fields. A body longer than
 * this version knows comes from a newer minor version; what is known of it is read and the rest ignored.
 *
 * <p><b>Source:</b> {@code PROTOCOL.md}, "Messages". <b>Thread:</b> any.
 */
public final class MessageCodec {
    private MessageCodec() {}

    /**
     * The frame that carries {@code message}.
     *
     * @param payload number of the payload that speaks or is addressed, 0 to 65 535
     * @param sequence the sender's frame count, 0 to 65 535
     * @param timeMillis the sender's clock, ms, unsigned 32 bits
     * @throws IllegalArgumentException if {@code message} is an order
     */
    public static Frame encode(Message message, int payload, int sequence, long timeMillis) {
        if (message instanceof Order) {
            throw new IllegalArgumentException("message : " + message + " (expected: no order, a session seals those)");
        }
        Header header = new Header(Header.VERSION, Kind.of(message).code(), payload, sequence, timeMillis);
        return new Frame(header, Bytes.of(fields(message)));
    }

    /** What {@code frame} says, for every kind but orders, which are malformed here: their session opens them. */
    public static Decoded decode(Frame frame) {
        int code = frame.header().kind();
        Optional<Kind> kind = Kind.of(code);
        if (kind.isPresent() && kind.get().isOrder()) {
            return new Decoded.Malformed(code, "an order, which only its session can read");
        }
        return decode(code, kind, frame.body().readOnlyBuffer());
    }

    /** The body of {@code message}; for an order, the fields between the start of its envelope and its tag. */
    public static byte[] fields(Message message) {
        WireWriter body = new WireWriter();
        Kind.of(message).write(message, body);
        return body.toArray();
    }

    /** What the {@code fields} of a message of this kind say. */
    public static Decoded decode(int kind, byte[] fields) {
        return decode(kind, Kind.of(kind), ByteBuffer.wrap(fields));
    }

    /** CRC-16/IBM-3740 over the settings as they travel: equal checks mean equal settings, 0 to 65 535. */
    public static int settingsCheck(Settings settings) {
        return Crc16.of(fields(settings));
    }

    // The records know their ranges; what they refuse is malformed. So no range stands in two places.
    private static Decoded decode(int code, Optional<Kind> kind, ByteBuffer fields) {
        if (kind.isEmpty()) {
            return new Decoded.UnknownKind(code);
        }
        try {
            return new Decoded.Known(kind.get().read(new WireReader(fields)));
        } catch (IllegalArgumentException outOfRange) {
            return new Decoded.Malformed(code, outOfRange.getMessage());
        }
    }
}
