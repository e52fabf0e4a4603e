package ouzel.protocol.frame;

/**
 * The frame checksum CRC-16/IBM-3740: polynomial 0x1021, start 0xFFFF, not reflected, no final XOR.
 *
 * <p>Over the nine digits {@code 123456789} it gives 0x29B1. It finds every error of one, two or three bits and every
 * burst of up to 16 bits in a frame. It says nothing about who sent the frame: that is the message tag's work.
 *
 * <p>Source: {@code PROTOCOL.md}, "Checksum".
 */
public final class Crc16 {
    /** What the register holds before the first byte, and so the checksum of nothing. */
    public static final int START = 0xFFFF;

    private static final int POLYNOMIAL = 0x1021;
    /** What a byte adds to the register: alone, and with one, two and three bytes behind it. */
    private static final char[] TABLE = table();

    private static final char[] ONE_BEHIND = oneMoreBehind(TABLE);
    private static final char[] TWO_BEHIND = oneMoreBehind(ONE_BEHIND);
    private static final char[] THREE_BEHIND = oneMoreBehind(TWO_BEHIND);

    private Crc16() {}

    /** Checksum of all of {@code bytes}, 0 to 65 535. */
    public static int of(byte... bytes) {
        return of(bytes, bytes.length);
    }

    /**
     * Checksum of the first {@code length} of {@code bytes}, 0 to 65 535.
     *
     * <p>Goes by fours: the checksum is linear, so what each byte adds is looked up by itself and by how many bytes
     * come behind it, and the processor need not wait for one before it takes the next.
     */
    public static int of(byte[] bytes, int length) {
        int crc = START;
        int i = 0;
        for (; i + 4 <= length; i += 4) {
            crc = THREE_BEHIND[(crc >> 8 ^ bytes[i]) & 0xFF]
                    ^ TWO_BEHIND[(crc ^ bytes[i + 1]) & 0xFF]
                    ^ ONE_BEHIND[bytes[i + 2] & 0xFF]
                    ^ TABLE[bytes[i + 3] & 0xFF];
        }
        for (; i < length; i++) {
            crc = update(crc, bytes[i]);
        }
        return crc;
    }

    /** The register after one more byte; for receivers that take a frame byte by byte. */
    public static int update(int crc, int oneByte) {
        return (crc << 8 & 0xFFFF) ^ TABLE[(crc >> 8 ^ oneByte) & 0xFF];
    }

    private static char[] oneMoreBehind(char[] table) {
        char[] next = new char[table.length];
        for (int index = 0; index < next.length; index++) {
            next[index] = (char) update(table[index], 0);
        }
        return next;
    }

    private static char[] table() {
        char[] table = new char[256];
        for (int index = 0; index < table.length; index++) {
            int crc = index << 8;
            for (int bit = 0; bit < 8; bit++) {
                crc = (crc & 0x8000) == 0 ? crc << 1 : crc << 1 ^ POLYNOMIAL;
            }
            table[index] = (char) crc;
        }
        return table;
    }
}
