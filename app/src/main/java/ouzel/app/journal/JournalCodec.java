package ouzel.app.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;
import java.util.zip.CRC32C;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;
import ouzel.protocol.codec.Decoded;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.message.Downlink;

/**
 * Journal records to bytes and back; little-endian.
 *
 * <pre>
 * offset   0        4        8      9        17          25
 *          | length | crc    | kind | nanos  | utcMillis | body ...
 *          | u32    | u32    | u8   | i64    | i64       | length - 17 bytes
 * </pre>
 *
 * <p>{@code length} counts the bytes behind {@code crc}; {@code crc} is CRC-32C over {@code length} and all behind
 * {@code crc}, so no single bit of a record can turn unseen. Kinds: 1 a frame as heard (header and body, without
 * stuffing and checksum, so that what was really said is kept and read again), 2 a tick (no body), 3 any other stimulus
 * as JSON.
 */
final class JournalCodec {
    /** Bytes before the kind. */
    static final int PREFIX_LENGTH = 8;
    /** Bytes of kind and both clocks. */
    static final int STAMP_LENGTH = 17;
    /** Longest record, prefix and stamp included, bytes; the longest honest one is a long sentence. */
    static final int LONGEST_RECORD = 65_536;

    private static final int CRC_AT = 4;
    private static final byte HEARD = 1;
    private static final byte TICKED = 2;
    private static final byte TOLD = 3;

    /** What stands next in a run of bytes. */
    sealed interface Next {
        /** A whole, proven record and its length, bytes. */
        record Whole(Entry entry, int length) implements Next {}

        /** The bytes end before the record does. */
        record Unfinished() implements Next {}

        /** No record that this program wrote. */
        record Damaged(String why) implements Next {}
    }

    private JournalCodec() {}

    /**
     * One whole record.
     *
     * @throws IOException if the stimulus makes a longer record than a reader would take
     */
    static byte[] write(Entry entry) throws IOException {
        Stimulus stimulus = entry.stimulus();
        if (stimulus instanceof Stimulus.Heard heard) {
            return record(entry.at(), HEARD, FrameImage.write(heard.frame()));
        }
        if (stimulus instanceof Stimulus.Ticked) {
            return record(entry.at(), TICKED, new byte[0]);
        }
        return record(entry.at(), TOLD, StimulusJson.write(stimulus));
    }

    private static byte[] record(Moment at, byte kind, byte[] body) throws IOException {
        int size = PREFIX_LENGTH + STAMP_LENGTH + body.length;
        if (size > LONGEST_RECORD) {
            throw new IOException("record : " + size + " bytes (expected: at most " + LONGEST_RECORD + ")");
        }
        ByteBuffer record = ByteBuffer.allocate(size)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(STAMP_LENGTH + body.length)
                .putInt(0)
                .put(kind)
                .putLong(at.nanos())
                .putLong(at.utcMillis())
                .put(body);
        record.putInt(CRC_AT, checksum(record, 0, STAMP_LENGTH + body.length));
        return record.array();
    }

    /**
     * What stands at the position of {@code source}, which must be little-endian; moves on behind a whole record and
     * stays where it is otherwise.
     */
    static Next read(ByteBuffer source) {
        if (source.remaining() < PREFIX_LENGTH) {
            return new Next.Unfinished();
        }
        int start = source.position();
        int length = source.getInt(start);
        if (length < STAMP_LENGTH || length > LONGEST_RECORD - PREFIX_LENGTH) {
            return new Next.Damaged("a length of " + Integer.toUnsignedString(length) + " bytes");
        }
        if (source.remaining() < PREFIX_LENGTH + length) {
            return new Next.Unfinished();
        }
        if (source.getInt(start + CRC_AT) != checksum(source, start, length)) {
            return new Next.Damaged("a checksum that does not fit");
        }
        return content(source.slice(start + PREFIX_LENGTH, length).order(ByteOrder.LITTLE_ENDIAN), source);
    }

    private static Next content(ByteBuffer content, ByteBuffer source) {
        byte kind = content.get();
        Moment at = new Moment(content.getLong(), content.getLong());
        byte[] body = new byte[content.remaining()];
        content.get(body);
        Optional<Stimulus> stimulus = stimulus(kind, body);
        if (stimulus.isEmpty()) {
            return new Next.Damaged("a record of kind " + kind + " that this version cannot read");
        }
        int length = PREFIX_LENGTH + STAMP_LENGTH + body.length;
        source.position(source.position() + length);
        return new Next.Whole(new Entry(at, stimulus.get()), length);
    }

    private static Optional<Stimulus> stimulus(byte kind, byte[] body) {
        return switch (kind) {
            case HEARD -> heard(body);
            case TICKED -> body.length == 0 ? Optional.of(new Stimulus.Ticked()) : Optional.empty();
            case TOLD -> told(body);
            default -> Optional.empty();
        };
    }

    private static Optional<Stimulus> heard(byte[] body) {
        if (!FrameImage.fits(body.length)) {
            return Optional.empty();
        }
        Frame frame = FrameImage.read(body);
        return MessageCodec.decode(frame) instanceof Decoded.Known known && known.message() instanceof Downlink message
                ? Optional.of(new Stimulus.Heard(frame, message))
                : Optional.empty();
    }

    private static Optional<Stimulus> told(byte[] body) {
        try {
            return Optional.of(StimulusJson.read(body));
        } catch (IOException unreadable) {
            // Its checksum is right, so a newer program wrote it; the caller says that it cannot be read.
            return Optional.empty();
        }
    }

    private static int checksum(ByteBuffer record, int start, int length) {
        CRC32C crc = new CRC32C();
        crc.update(record.slice(start, CRC_AT));
        crc.update(record.slice(start + PREFIX_LENGTH, length));
        return (int) crc.getValue();
    }
}
