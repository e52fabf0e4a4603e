package ouzel.protocol.frame;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;

/**
 * Turns a frame into the bytes that go on the line.
 *
 * <pre>
 * 00 | stuffed( header 10 | body 0..228 | crc 2 ) | 00
 * </pre>
 *
 * <p>The zero in front ends whatever noise the line carried before, so that noise costs no frame.
 */
public final class FrameEncoder {
    /** Longest frame on the line: both delimiters, one code byte and the frame itself. */
    public static final int LONGEST = Stuffing.longest(Frame.LONGEST) + 2;

    private FrameEncoder() {}

    /** The frame as it goes on the line, {@value Header#LENGTH} + 5 to {@link #LONGEST} bytes. */
    public static byte[] encode(Frame frame) {
        byte[] plain = plain(frame);
        byte[] line = new byte[LONGEST];
        int stuffed = Stuffing.stuff(plain, plain.length, line, 1);
        return Arrays.copyOf(line, stuffed + 2);
    }

    /** How many bytes {@link #encode} makes of the frame. */
    public static int length(Frame frame) {
        return Stuffing.longest(Header.LENGTH + frame.body().length() + Frame.CRC_LENGTH) + 2;
    }

    /** The frame before stuffing: header, body and checksum. */
    public static byte[] plain(Frame frame) {
        int length = Header.LENGTH + frame.body().length();
        ByteBuffer plain = ByteBuffer.allocate(length + Frame.CRC_LENGTH).order(ByteOrder.LITTLE_ENDIAN);
        plain.put(header(frame.header())).put(frame.body().toArray());
        plain.putShort((short) Crc16.of(plain.array(), length));
        return plain.array();
    }

    /** The ten bytes of {@code header}; message tags cover them too. */
    public static byte[] header(Header header) {
        return ByteBuffer.allocate(Header.LENGTH)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put((byte) header.version())
                .put((byte) header.kind())
                .putShort((short) header.payload())
                .putShort((short) header.sequence())
                .putInt((int) header.timeMillis())
                .array();
    }
}
