package ouzel.protocol.message;

/**
 * The payload's answer to {@link Open}: its own fresh number and a tag that only a holder of the pairing key can make.
 *
 * @param consoleNonce the console's nonce, sent back
 * @param payloadNonce 16 bytes, never used before by this payload
 * @param tag 16 bytes, made under the session key that both nonces give
 */
public record Challenge(Bytes consoleNonce, Bytes payloadNonce, Bytes tag) implements Downlink {

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public Challenge {
        Checks.length("consoleNonce", consoleNonce, Open.NONCE_LENGTH);
        Checks.length("payloadNonce", payloadNonce, Open.NONCE_LENGTH);
        Checks.length("tag", tag, 16);
    }
}
