package ouzel.protocol.frame;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.function.Consumer;
import ouzel.protocol.message.Bytes;

/**
 * Finds frames in a stream of bytes that may begin anywhere, break anywhere and hold anything.
 *
 * <p>A zero byte ends a frame and starts the next, whatever came before: a bad frame costs only itself. Frames of any
 * protocol version are given on, because the receiver of another major version wants to name both.
 *
 * <p><b>Memory:</b> one buffer of 241 bytes, whatever the line does. <b>Errors:</b> never an exception because of the
 * bytes; what is thrown away is counted. <b>Thread:</b> one at a time.
 */
public final class FrameParser {
    private static final int LONGEST_STUFFED = Stuffing.longest(Frame.LONGEST);

    private final byte[] run = new byte[LONGEST_STUFFED];
    private int length;
    private boolean tooLongAlready;

    private long good;
    private long badStuffing;
    private long badCrc;
    private long tooShort;
    private long tooLong;

    /** Takes the next bytes of the line and gives each frame that they complete to {@code frames}, in order. */
    public void feed(byte[] chunk, Consumer<Frame> frames) {
        feed(ByteBuffer.wrap(chunk), frames);
    }

    /** The same for the remaining bytes of {@code chunk}; all of them are consumed. */
    public void feed(ByteBuffer chunk, Consumer<Frame> frames) {
        while (chunk.hasRemaining()) {
            int piece = lengthBeforeZero(chunk);
            take(chunk, piece);
            if (chunk.hasRemaining()) {
                chunk.get();
                endOfRun(frames);
            }
        }
    }

    /** Number of bytes before the next zero, or before the end if there is none. */
    private static int lengthBeforeZero(ByteBuffer chunk) {
        int at = chunk.position();
        int end = chunk.limit();
        while (at < end && chunk.get(at) != 0) {
            at++;
        }
        return at - chunk.position();
    }

    /** Moves {@code piece} bytes behind the run, or as many as it holds, and skips the rest. */
    private void take(ByteBuffer chunk, int piece) {
        int fits = Math.min(piece, LONGEST_STUFFED - length);
        chunk.get(run, length, fits);
        length += fits;
        tooLongAlready |= fits < piece;
        chunk.position(chunk.position() + piece - fits);
    }

    /** What became of the bytes so far. */
    public ParserCounts counts() {
        return new ParserCounts(good, badStuffing, badCrc, tooShort, tooLong);
    }

    /** Forgets an unfinished frame, for use when the line was interrupted; the counts stay. */
    public void reset() {
        length = 0;
        tooLongAlready = false;
    }

    private void endOfRun(Consumer<Frame> frames) {
        int stuffed = length;
        boolean overrun = tooLongAlready;
        reset();
        if (overrun) {
            tooLong++;
        } else if (stuffed > 0) {
            read(Stuffing.unstuff(run, stuffed), frames);
        }
    }

    private void read(int plain, Consumer<Frame> frames) {
        if (plain == Stuffing.BROKEN) {
            badStuffing++;
        } else if (plain < Header.LENGTH + Frame.CRC_LENGTH) {
            tooShort++;
        } else if (plain > Frame.LONGEST) {
            tooLong++;
        } else if (!checksumHolds(plain)) {
            badCrc++;
        } else {
            good++;
            frames.accept(frame(plain));
        }
    }

    private boolean checksumHolds(int plain) {
        int covered = plain - Frame.CRC_LENGTH;
        int carried = run[covered] & 0xFF | (run[covered + 1] & 0xFF) << 8;
        return Crc16.of(run, covered) == carried;
    }

    private Frame frame(int plain) {
        ByteBuffer header = ByteBuffer.wrap(run, 0, Header.LENGTH).order(ByteOrder.LITTLE_ENDIAN);
        return new Frame(
                new Header(
                        header.get() & 0xFF,
                        header.get() & 0xFF,
                        header.getShort() & 0xFFFF,
                        header.getShort() & 0xFFFF,
                        header.getInt() & 0xFFFF_FFFFL),
                Bytes.copyOf(run, Header.LENGTH, plain - Frame.CRC_LENGTH));
    }
}
