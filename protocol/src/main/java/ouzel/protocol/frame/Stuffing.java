package ouzel.protocol.frame;

import java.util.Arrays;

/**
 * Consistent overhead byte stuffing: takes every zero out of a run of bytes, so that a zero can mean "frame ends here".
 *
 * <p>The run is cut at its zeros. Each piece is sent as a code byte, which is the piece's length plus one, and the
 * piece; the zero itself is not sent. A piece of 254 bytes is sent with code 0xFF and stands for no zero.
 *
 * <pre>
 * before: 11 22 00 33          after: 03 11 22 02 33
 * before: 00                   after: 01 01
 * before: (nothing)            after: 01
 * </pre>
 *
 * <p>Source: Cheshire and Baker, "Consistent Overhead Byte Stuffing", IEEE/ACM Transactions on Networking 7(2), 1999.
 */
public final class Stuffing {
    /** Given by {@link #unstuff} where the input is not a stuffed run. */
    public static final int BROKEN = -1;

    private static final int FULL_PIECE = 0xFF;

    private Stuffing() {}

    /** Most bytes that {@code length} bytes can grow to. */
    public static int longest(int length) {
        return length + 1 + length / (FULL_PIECE - 1);
    }

    /**
     * Writes the first {@code length} bytes of {@code plain} into {@code stuffed} from {@code offset} on.
     *
     * @return number of bytes written, at most {@link #longest}
     */
    public static int stuff(byte[] plain, int length, byte[] stuffed, int offset) {
        int code = offset;
        int out = offset + 1;
        for (int in = 0; in < length; in++) {
            if (plain[in] != 0) {
                stuffed[out++] = plain[in];
            }
            if (plain[in] == 0 || out - code == FULL_PIECE) {
                stuffed[code] = (byte) (out - code);
                code = out++;
            }
        }
        stuffed[code] = (byte) (out - code);
        return out - offset;
    }

    /** All of {@code plain}, stuffed, without a delimiter. */
    public static byte[] stuff(byte[] plain) {
        byte[] stuffed = new byte[longest(plain.length)];
        return Arrays.copyOf(stuffed, stuff(plain, plain.length, stuffed, 0));
    }

    /**
     * Undoes the stuffing in place. Accepts a run that ends on a full piece with or without the code byte 01 after it.
     *
     * @param bytes the stuffed run without its delimiter; on return its first bytes are the plain ones
     * @param length length of the stuffed run
     * @return length of the plain run, or {@link #BROKEN} if there is a zero inside, a code points past the end, or the
     *     run is empty
     */
    public static int unstuff(byte[] bytes, int length) {
        if (length == 0) {
            return BROKEN;
        }
        int out = 0;
        int in = 0;
        while (in < length) {
            int code = bytes[in++] & 0xFF;
            int end = in + code - 1;
            if (code == 0 || end > length) {
                return BROKEN;
            }
            while (in < end) {
                if (bytes[in] == 0) {
                    return BROKEN;
                }
                bytes[out++] = bytes[in++];
            }
            if (code != FULL_PIECE && in < length) {
                bytes[out++] = 0;
            }
        }
        return out;
    }
}
