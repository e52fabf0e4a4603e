package ouzel.protocol.session;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;

/**
 * The secret that one console and one payload share, put into both by hand. Never travels, and never leaves this
 * package: it has no accessor, its text form is a placeholder and it compares in constant time.
 *
 * <p><b>Thread:</b> any.
 */
public final class PairingKey {
    /** Length of a key, bytes. */
    public static final int LENGTH = 32;

    private static final PairingKey REHEARSAL =
            of("ouzel rehearsal key, no secret!!".getBytes(StandardCharsets.US_ASCII));

    private final byte[] secret;

    private PairingKey(byte[] secret) {
        this.secret = secret;
    }

    /**
     * The key with these bytes; the array is copied, and the caller does well to clear it.
     *
     * @throws IllegalArgumentException if there are not {@value #LENGTH} of them
     */
    public static PairingKey of(byte[] secret) {
        if (secret.length != LENGTH) {
            throw new IllegalArgumentException("secret : " + secret.length + " bytes (expected: " + LENGTH + ")");
        }
        return new PairingKey(secret.clone());
    }

    /**
     * The key written as 64 hex digits. The message of the exception does not repeat what was given: it may be a key
     * with a slip in it.
     *
     * @throws IllegalArgumentException if {@code digits} is anything else
     */
    public static PairingKey fromHex(String digits) {
        if (!digits.matches("[0-9a-fA-F]{" + 2 * LENGTH + "}")) {
            throw new IllegalArgumentException(
                    "digits : " + digits.length() + " characters (expected: " + 2 * LENGTH + " hex digits)");
        }
        return new PairingKey(HexFormat.of().parseHex(digits));
    }

    /** The key everybody knows, for payloads on which nothing can move. Refuse it on any line to a real one. */
    public static PairingKey rehearsal() {
        return REHEARSAL;
    }

    /** True if this is the key everybody knows. */
    public boolean isRehearsal() {
        return equals(REHEARSAL);
    }

    /** The key's bytes, for the derivation of session keys alone. */
    byte[] secret() {
        return secret;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PairingKey key && MessageDigest.isEqual(secret, key.secret);
    }

    /** One of 65 536 values, so that a hash seen in a dump gives the key away no further. */
    @Override
    public int hashCode() {
        return ByteBuffer.wrap(Hmac.of(secret)).getShort();
    }

    @Override
    public String toString() {
        return isRehearsal() ? "PairingKey[rehearsal]" : "PairingKey[secret]";
    }
}
