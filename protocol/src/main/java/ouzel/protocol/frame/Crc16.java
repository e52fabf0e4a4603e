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
    /** Bytes that {@link #of(byte[], int)} takes at a time. */
    private static final int STRIDE = 8;
    /** What a byte adds to the register, by the number of bytes that come behind it in the stride, and by its value. */
    private static final char[][] WITH_BEHIND = tables();

    private static final char[] TABLE = WITH_BEHIND[0];

    private Crc16() {}

    /** Checksum of all of {@code bytes}, 0 to 65 535. */
    public static int of(byte... bytes) {
        return of(bytes, bytes.length);
    }

    /**
     * Checksum of the first {@code length} of {@code bytes}, 0 to 65 535.
     *
     * <p>Goes by eights: the checksum is linear, so what each byte adds is looked up by itself and by how many bytes
     * come behind it, and the processor need not wait for one before it takes the next.
     */
    public static int of(byte[] bytes, int length) {
        int crc = START;
        int i = 0;
        for (; i + STRIDE <= length; i += STRIDE) {
            crc = WITH_BEHIND[7][(crc >> 8 ^ bytes[i]) & 0xFF]
                    ^ WITH_BEHIND[6][(crc ^ bytes[i + 1]) & 0xFF]
                    ^ WITH_BEHIND[5][bytes[i + 2] & 0xFF]
                    ^ WITH_BEHIND[4][bytes[i + 3] & 0xFF]
                    ^ WITH_BEHIND[3][bytes[i + 4] & 0xFF]
                    ^ WITH_BEHIND[2][bytes[i + 5] & 0xFF]
                    ^ WITH_BEHIND[1][bytes[i + 6] & 0xFF]
                    ^ WITH_BEHIND[0][bytes[i + 7] & 0xFF];
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

    private static char[][] tables() {
        char[][] tables = new char[STRIDE][];
        tables[0] = table();
        for (int behind = 1; behind < STRIDE; behind++) {
            tables[behind] = new char[256];
            for (int index = 0; index < 256; index++) {
                int before = tables[behind - 1][index];
                tables[behind][index] = (char) (before << 8 ^ tables[0][before >> 8]);
            }
        }
        return tables;
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
