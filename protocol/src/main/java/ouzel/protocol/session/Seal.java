package ouzel.protocol.session;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import ouzel.protocol.codec.Decoded;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;

/**
 * The envelope of an order on the wire.
 *
 * <pre>
 * header 10 | counter 4 | order id 4 | expires at 4 | fields 0..200 | tag 16
 * \____________________________ covered by the tag ________________/
 * </pre>
 *
 * <p><b>Source:</b> {@code PROTOCOL.md}, "Envelope".
 */
final class Seal {
    /** Bytes between the header and the order's fields. */
    static final int ENVELOPE_LENGTH = 12;
    /** Shortest body of an order. */
    static final int SHORTEST_BODY = ENVELOPE_LENGTH + SessionKey.TAG_LENGTH;

    private Seal() {}

    /** The frame that carries {@code envelope} to {@code payload}, with its tag. */
    static Frame close(SessionKey key, Envelope envelope, int payload, int sequence, long timeMillis) {
        byte[] fields = MessageCodec.fields(envelope.order());
        Header header = new Header(Header.VERSION, Kind.of(envelope.order()).code(), payload, sequence, timeMillis);
        ByteBuffer body = ByteBuffer.allocate(SHORTEST_BODY + fields.length).order(ByteOrder.LITTLE_ENDIAN);
        body.putInt((int) envelope.counter())
                .putInt((int) envelope.orderId())
                .putInt((int) envelope.expiresAtMillis())
                .put(fields);
        byte[] covered = Arrays.copyOf(body.array(), body.position());
        body.put(key.tagOfOrder(FrameEncoder.header(header), covered));
        return new Frame(header, Bytes.of(body.array()));
    }

    /** True if {@code frame}, of {@value #SHORTEST_BODY} bytes of body or more, carries the tag {@code key} gives. */
    static boolean isTrue(SessionKey key, Frame frame) {
        byte[] body = frame.body().toArray();
        int covered = body.length - SessionKey.TAG_LENGTH;
        byte[] expected = key.tagOfOrder(FrameEncoder.header(frame.header()), Arrays.copyOf(body, covered));
        return SessionKey.isSame(expected, Arrays.copyOfRange(body, covered, body.length));
    }

    /** The counter of a sealed frame. */
    static long counter(Frame frame) {
        return unsigned32(frame, 0);
    }

    /** The order's id of a sealed frame. */
    static long orderId(Frame frame) {
        return unsigned32(frame, 4);
    }

    /** The instant after which a sealed frame must not act, on the payload's clock, ms. */
    static long expiresAtMillis(Frame frame) {
        return unsigned32(frame, 8);
    }

    /** What the fields inside the envelope say. */
    static Decoded order(Frame frame) {
        byte[] body = frame.body().toArray();
        return MessageCodec.decode(
                frame.header().kind(), Arrays.copyOfRange(body, ENVELOPE_LENGTH, body.length - SessionKey.TAG_LENGTH));
    }

    private static long unsigned32(Frame frame, int offset) {
        return ByteBuffer.wrap(frame.body().toArray())
                        .order(ByteOrder.LITTLE_ENDIAN)
                        .getInt(offset)
                & 0xFFFF_FFFFL;
    }
}
