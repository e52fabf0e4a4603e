package ouzel.app.swarm;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Arrays;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Challenge;
import ouzel.protocol.message.Order;

/** The tags of one session, worked out anew from PROTOCOL.md and RFC 5869, apart from the program's own code. */
final class SessionProof {
    static final int ENVELOPE = 12;
    static final int TAG = 16;
    private static final int HASH = 32;

    private final Challenge challenge;
    private final Mac orders;

    SessionProof(byte[] secret, Challenge challenge, int payload) {
        this.challenge = challenge;
        byte[] salt = join(
                challenge.consoleNonce().toArray(), challenge.payloadNonce().toArray());
        byte[] info =
                join("ouzel/1".getBytes(StandardCharsets.US_ASCII), new byte[] {(byte) payload, (byte) (payload >> 8)});
        byte[] extracted = mac(salt).doFinal(secret);
        byte[] first = mac(extracted).doFinal(join(info, new byte[] {1}));
        orders = mac(Arrays.copyOf(first, HASH));
    }

    boolean isFor(Challenge other) {
        return challenge.equals(other);
    }

    /** True if {@code frame} was sealed for this session. */
    boolean proves(Frame frame) {
        byte[] body = frame.body().toArray();
        if (body.length < ENVELOPE + TAG) {
            return false;
        }
        byte[] covered = Arrays.copyOf(body, body.length - TAG);
        return Arrays.equals(tag(frame.header(), covered), Arrays.copyOfRange(body, covered.length, body.length));
    }

    /** A frame for this session with any counter, id and expiry one likes. */
    Frame seal(Header header, Envelope envelope) {
        byte[] fields = MessageCodec.fields(envelope.order());
        byte[] covered = ByteBuffer.allocate(ENVELOPE + fields.length)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt((int) envelope.counter())
                .putInt((int) envelope.orderId())
                .putInt((int) envelope.expiresAtMillis())
                .put(fields)
                .array();
        return new Frame(header, Bytes.of(join(covered, tag(header, covered))));
    }

    /** What stands in a sealed frame. */
    record Envelope(long counter, long orderId, long expiresAtMillis, Order order) {}

    private byte[] tag(Header header, byte[] covered) {
        orders.update(FrameEncoder.header(header));
        return Arrays.copyOf(orders.doFinal(covered), TAG);
    }

    private static byte[] join(byte[] left, byte[] right) {
        byte[] both = Arrays.copyOf(left, left.length + right.length);
        System.arraycopy(right, 0, both, left.length, right.length);
        return both;
    }

    private static Mac mac(byte[] key) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            return mac;
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java platform must offer HmacSHA256", impossible);
        }
    }
}
