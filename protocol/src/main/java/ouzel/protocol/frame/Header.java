package ouzel.protocol.frame;

/**
 * The ten bytes that start every frame, in this order, little-endian.
 *
 * @param version major version in the high nibble, minor in the low, 0 to 255
 * @param kind message kind, 0 to 255
 * @param payload number of the payload that speaks (down) or is addressed (up), 0 to 65 535; 0 addresses any payload
 *     and is allowed in {@link ouzel.protocol.message.Open} only
 * @param sequence counts frames of this sender, modulo 65 536
 * @param timeMillis the sender's monotonic clock, ms, modulo 2^32
 */
public record Header(int version, int kind, int payload, int sequence, long timeMillis) {
    /** Bytes on the wire. */
    public static final int LENGTH = 10;
    /** The version this program speaks: 1.0. */
    public static final int VERSION = 0x10;

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public Header {
        check("version", version, 0xFF);
        check("kind", kind, 0xFF);
        check("payload", payload, 0xFFFF);
        check("sequence", sequence, 0xFFFF);
        check("timeMillis", timeMillis, 0xFFFF_FFFFL);
    }

    /** Major version: frames of another one are not read any further. */
    public int major() {
        return version >> 4;
    }

    private static void check(String name, long value, long greatest) {
        if (value < 0 || value > greatest) {
            throw new IllegalArgumentException(name + " : " + value + " (expected: 0 to " + greatest + ")");
        }
    }
}
