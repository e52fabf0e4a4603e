package ouzel.protocol.session;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;

/**
 * The keys of one session, made by both ends from the pairing key and both nonces.
 *
 * <p>What the console proves and what the payload proves are made under different keys, so that neither can be sent
 * back as the other. The public number names the session in every status; it tells nothing about the keys.
 *
 * <p><b>Source:</b> {@code PROTOCOL.md}, "Session keys"; RFC 5869; RFC 4868 for the 128 bits. <b>Thread:</b> any.
 */
final class SessionKey {
    /** Length of a message tag, bytes: the left half of an HMAC-SHA-256. */
    static final int TAG_LENGTH = 16;

    private final byte[] orderKey;
    private final byte[] proofKey;
    private final long number;

    private SessionKey(byte[] orderKey, byte[] proofKey, long number) {
        this.orderKey = orderKey;
        this.proofKey = proofKey;
        this.number = number;
    }

    /** The keys that {@code pairing} and both nonces give for one payload, by number, and one major version. */
    static SessionKey derive(PairingKey pairing, Bytes consoleNonce, Bytes payloadNonce, int payload) {
        byte[] salt = ByteBuffer.allocate(consoleNonce.length() + payloadNonce.length())
                .put(consoleNonce.toArray())
                .put(payloadNonce.toArray())
                .array();
        byte[] expanded =
                Hmac.expand(Hmac.extract(salt, pairing.secret()), info(payload), 2 * Hmac.LENGTH + Integer.BYTES);
        return new SessionKey(
                Arrays.copyOf(expanded, Hmac.LENGTH),
                Arrays.copyOfRange(expanded, Hmac.LENGTH, 2 * Hmac.LENGTH),
                number(expanded));
    }

    /** Names the session in public, 1 to 4 294 967 295. */
    long number() {
        return number;
    }

    /** The tag of an order: over its frame's header and its body up to the tag. */
    byte[] tagOfOrder(byte[] header, byte[] bodyBeforeTag) {
        return tag(orderKey, header, bodyBeforeTag);
    }

    /** The tag by which a payload proves that it holds the pairing key: over both nonces. */
    Bytes proof(Bytes consoleNonce, Bytes payloadNonce) {
        return Bytes.of(tag(proofKey, consoleNonce.toArray(), payloadNonce.toArray()));
    }

    /** True if both tags are the same, in a time that does not tell how much of them is. */
    static boolean isSame(byte[] tag, byte[] other) {
        return MessageDigest.isEqual(tag, other);
    }

    @Override
    public String toString() {
        return "SessionKey[" + number + "]";
    }

    private static byte[] tag(byte[] key, byte[]... parts) {
        return Arrays.copyOf(Hmac.of(key, parts), TAG_LENGTH);
    }

    private static byte[] info(int payload) {
        byte[] words = ("ouzel/" + (Header.VERSION >> 4)).getBytes(StandardCharsets.US_ASCII);
        return ByteBuffer.allocate(words.length + Short.BYTES)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put(words)
                .putShort((short) payload)
                .array();
    }

    // 0 stands for "no session" in a status, so one number in 4 294 967 296 is moved.
    private static long number(byte[] expanded) {
        int drawn = ByteBuffer.wrap(expanded).order(ByteOrder.LITTLE_ENDIAN).getInt(2 * Hmac.LENGTH);
        return drawn == 0 ? 1 : drawn & 0xFFFF_FFFFL;
    }
}
