package ouzel.app.journal;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.zip.CRC32C;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.Refusal;

/**
 * What a journal file starts with; little-endian.
 *
 * <pre>
 * offset   0       8        10      11          19       20           20 + n
 *          | magic | format | flags | utcMillis | n      | version    | crc
 *          | 8     | u16    | u8    | i64       | u8     | n of UTF-8 | u32, CRC-32C over all before
 * </pre>
 *
 * <p>The magic holds a carriage return, a line feed and an end-of-text byte, so that a copy made in text mode is found
 * out. Bit 0 of the flags: rehearsal.
 *
 * @param created when the file was made, to the millisecond
 * @param rehearsal true if no real payload was at the other end
 * @param programVersion version of the program that made it, at most 255 bytes of UTF-8
 */
public record JournalHeader(Instant created, boolean rehearsal, String programVersion) {
    /** The format this program writes, and the newest that it reads. */
    public static final int FORMAT = 1;

    /** Longest header, bytes. */
    static final int LONGEST = 20 + 255 + 4;

    private static final byte[] MAGIC = {'O', 'U', 'Z', 'E', 'L', '\r', '\n', 0x1A};
    private static final int FIXED_LENGTH = 20;
    private static final int CRC_LENGTH = 4;
    private static final int REHEARSAL = 1;

    /** Cuts the instant to the millisecond, which is what the file holds. */
    public JournalHeader {
        created = Instant.ofEpochMilli(created.toEpochMilli());
        int length = programVersion.getBytes(StandardCharsets.UTF_8).length;
        if (length > 255) {
            throw new IllegalArgumentException("programVersion : " + length + " bytes (expected: at most 255)");
        }
    }

    /** The header as it stands in the file. */
    byte[] write() {
        byte[] version = programVersion.getBytes(StandardCharsets.UTF_8);
        ByteBuffer target = ByteBuffer.allocate(FIXED_LENGTH + version.length + CRC_LENGTH)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put(MAGIC)
                .putShort((short) FORMAT)
                .put((byte) (rehearsal ? REHEARSAL : 0))
                .putLong(created.toEpochMilli())
                .put((byte) version.length)
                .put(version);
        return target.putInt(checksum(target, 0, FIXED_LENGTH + version.length)).array();
    }

    /**
     * The header at the position of {@code source}, which must be little-endian and is moved on behind it.
     *
     * @param name the file's name, for the sentence
     * @throws Refusal if this is no journal, one of a newer format, or its header is cut or damaged
     */
    static JournalHeader read(ByteBuffer source, String name) throws Refusal {
        requireMagic(source, name);
        if (source.remaining() < FIXED_LENGTH) {
            throw unreadable(name + " ends within its header: nothing was recorded in it.");
        }
        int format = Short.toUnsignedInt(source.getShort(source.position() + MAGIC.length));
        if (format > FORMAT) {
            throw unreadable(name + " has journal format " + format + ", this program reads up to format " + FORMAT
                    + ": open it with a newer version of the program.");
        }
        int end = FIXED_LENGTH + Byte.toUnsignedInt(source.get(source.position() + FIXED_LENGTH - 1));
        if (source.remaining() < end + CRC_LENGTH) {
            throw unreadable(name + " ends within its header: nothing was recorded in it.");
        }
        if (format == 0 || source.getInt(source.position() + end) != checksum(source, source.position(), end)) {
            throw unreadable(name + " has a damaged header: open a backup copy of it.");
        }
        return fields(source);
    }

    private static void requireMagic(ByteBuffer source, String name) throws Refusal {
        byte[] start = new byte[Math.min(MAGIC.length, source.remaining())];
        source.get(source.position(), start);
        if (!Arrays.equals(start, MAGIC)) {
            throw unreadable(name + " is not a journal of this program.");
        }
    }

    private static JournalHeader fields(ByteBuffer source) {
        source.position(source.position() + MAGIC.length + Short.BYTES);
        boolean rehearsal = (source.get() & REHEARSAL) != 0;
        Instant created = Instant.ofEpochMilli(source.getLong());
        byte[] version = new byte[Byte.toUnsignedInt(source.get())];
        source.get(version);
        source.position(source.position() + CRC_LENGTH);
        return new JournalHeader(created, rehearsal, new String(version, StandardCharsets.UTF_8));
    }

    private static Refusal unreadable(String sentence) {
        return new Refusal(ExitCode.JOURNAL_UNREADABLE, sentence);
    }

    private static int checksum(ByteBuffer source, int start, int length) {
        CRC32C crc = new CRC32C();
        crc.update(source.slice(start, length));
        return (int) crc.getValue();
    }
}
