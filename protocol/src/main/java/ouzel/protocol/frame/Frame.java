package ouzel.protocol.frame;

import ouzel.protocol.message.Bytes;

/**
 * One frame, unstuffed and with its checksum proven.
 *
 * @param header the ten bytes every frame starts with
 * @param body what follows them, without the checksum, 0 to {@value #LONGEST_BODY} bytes
 */
public record Frame(Header header, Bytes body) {
    /** Longest frame before stuffing: header, body and checksum, bytes. */
    public static final int LONGEST = 240;
    /** Bytes of checksum at the end. */
    public static final int CRC_LENGTH = 2;
    /** Longest body, bytes. */
    public static final int LONGEST_BODY = LONGEST - Header.LENGTH - CRC_LENGTH;

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public Frame {
        if (body.length() > LONGEST_BODY) {
            throw new IllegalArgumentException(
                    "body : " + body.length() + " bytes (expected: at most " + LONGEST_BODY + ")");
        }
    }
}
