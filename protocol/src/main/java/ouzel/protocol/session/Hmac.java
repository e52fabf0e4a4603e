package ouzel.protocol.session;

import java.security.InvalidKeyException;
import java.security.NoSuchAlgorithmException;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * HMAC-SHA-256 and the key derivation built on it.
 *
 * <p><b>Source:</b> RFC 2104 and RFC 5869. <b>Thread:</b> any.
 */
final class Hmac {
    /** Bytes that the hash gives. */
    static final int LENGTH = 32;

    private static final String ALGORITHM = "HmacSHA256";

    private Hmac() {}

    /** HMAC-SHA-256 under {@code key} over all {@code parts}, one after the other. */
    static byte[] of(byte[] key, byte[]... parts) {
        try {
            Mac mac = Mac.getInstance(ALGORITHM);
            mac.init(new SecretKeySpec(key, ALGORITHM));
            for (byte[] part : parts) {
                mac.update(part);
            }
            return mac.doFinal();
        } catch (NoSuchAlgorithmException | InvalidKeyException impossible) {
            throw new IllegalStateException("every Java platform must offer " + ALGORITHM, impossible);
        }
    }

    /** First step of RFC 5869: one good key from keying material and a salt that need not be secret, nor empty. */
    static byte[] extract(byte[] salt, byte[] keyingMaterial) {
        return of(salt, keyingMaterial);
    }

    /** Second step of RFC 5869: {@code length} bytes, 1 to 8 160, bound to what {@code info} says they are for. */
    static byte[] expand(byte[] key, byte[] info, int length) {
        if (length < 1 || length > 255 * LENGTH) {
            throw new IllegalArgumentException("length : " + length + " (expected: 1 to " + 255 * LENGTH + ")");
        }
        byte[] expanded = new byte[length];
        byte[] block = {};
        for (int done = 0, number = 1; done < length; done += LENGTH, number++) {
            block = of(key, block, info, new byte[] {(byte) number});
            System.arraycopy(block, 0, expanded, done, Math.min(LENGTH, length - done));
        }
        return expanded;
    }
}
