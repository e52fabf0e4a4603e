package ouzel.protocol.message;

/**
 * First word of a session: the console's fresh random number. Opening changes nothing on board until the console has
 * proved that it holds the pairing key.
 *
 * @param consoleNonce 16 random bytes, never used before
 */
public record Open(Bytes consoleNonce) implements Uplink {
    /** Length of either side's nonce, bytes. */
    public static final int NONCE_LENGTH = 16;

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public Open {
        Checks.length("consoleNonce", consoleNonce, NONCE_LENGTH);
    }
}
