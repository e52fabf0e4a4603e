package ouzel.app.journal;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;

/**
 * A frame as the ten header bytes and the body, unstuffed and without its checksum, as {@code PROTOCOL.md} lays them
 * out: version u8, kind u8, payload u16, sequence u16, time u32, little-endian.
 */
final class FrameImage {
    private FrameImage() {}

    static byte[] write(Frame frame) {
        return ByteBuffer.allocate(Header.LENGTH + frame.body().length())
                .put(FrameEncoder.header(frame.header()))
                .put(frame.body().toArray())
                .array();
    }

    /** True if an image of {@code length} bytes can be a frame's. */
    static boolean fits(int length) {
        return length >= Header.LENGTH && length <= Header.LENGTH + Frame.LONGEST_BODY;
    }

    /** The frame that {@code image} is of; its length must {@linkplain #fits fit}. */
    static Frame read(byte[] image) {
        ByteBuffer source = ByteBuffer.wrap(image).order(ByteOrder.LITTLE_ENDIAN);
        Header header = new Header(
                Byte.toUnsignedInt(source.get()),
                Byte.toUnsignedInt(source.get()),
                Short.toUnsignedInt(source.getShort()),
                Short.toUnsignedInt(source.getShort()),
                Integer.toUnsignedLong(source.getInt()));
        byte[] body = new byte[source.remaining()];
        source.get(body);
        return new Frame(header, Bytes.of(body));
    }
}
