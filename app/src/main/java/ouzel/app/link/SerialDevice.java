package ouzel.app.link;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.io.File;
import java.io.IOException;
import java.util.Arrays;
import ouzel.app.link.LineFailure.Cause;

/**
 * One serial line, opened once and closed once: the only place that drives the port library. Every method may block and
 * none belongs on an event loop.
 *
 * <p>Reads wait for the first byte, at most {@value #READ_TIMEOUT_MILLIS} ms at a time, the shortest that POSIX
 * terminals can. A write waits until the system has taken all bytes; closing the line from another thread frees it.
 *
 * <p>Thread: {@link #open} and {@link #write} from one thread, {@link #awaitBytes} from another, {@link #close}
 * from any.
 */
final class SerialDevice {
    private static final int READ_TIMEOUT_MILLIS = 100;
    private static final int LONGEST_READ = 1_024;
    private static final int DATA_BITS = 8;

    private final String name;
    private final int baud;
    private final boolean holdsControlLinesLow;
    private final byte[] chunk = new byte[LONGEST_READ];
    private final SilenceWatch silence = new SilenceWatch();
    /** Handed from the thread that opens to those that read and close. */
    private volatile SerialPort port;

    private volatile boolean closed;

    /** A line that is not open yet, see {@link Port.Serial}. */
    SerialDevice(String name, int baud, boolean holdsControlLinesLow) {
        this.name = name;
        this.baud = baud;
        this.holdsControlLinesLow = holdsControlLinesLow;
    }

    /** Opens the line. */
    void open() throws LineFailure {
        try {
            SerialPort opening = prepared();
            port = opening;
            if (!opening.openPort(0)) {
                // The code means something only after a failure: a good open can leave one behind.
                throw SerialTrouble.ofOpening(name, baud, opening.getLastErrorCode(), exists());
            }
        } catch (SerialPortInvalidPortException unknown) {
            throw SerialTrouble.notThere(name, unknown);
        } catch (LinkageError broken) {
            throw new LineFailure(Cause.NO_NATIVE_PART, SerialTrouble.noNativePart(), broken);
        }
        checkOpened();
    }

    private SerialPort prepared() {
        SerialPort found = SerialPort.getCommPort(name);
        found.setComPortParameters(baud, DATA_BITS, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
        found.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
        found.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, READ_TIMEOUT_MILLIS, 0);
        if (holdsControlLinesLow) {
            found.clearDTR();
            found.clearRTS();
        }
        return found;
    }

    private void checkOpened() throws LineFailure {
        if (closed) {
            port.closePort();
            throw new LineFailure(Cause.OTHER, "The serial line " + name + " was closed while it was opened.");
        }
        int actual = port.getBaudRate();
        if (actual != baud) {
            port.closePort();
            throw new LineFailure(
                    Cause.NOT_SUITABLE,
                    "The serial line " + name + " runs at " + actual + " baud and not at " + baud
                            + " baud. Choose another speed.");
        }
    }

    private boolean exists() {
        return new File(name).exists();
    }

    /**
     * Waits for bytes.
     *
     * @return at least one byte, as soon as there are any; none if the line was closed here
     * @throws IOException if the line is gone; the message is a sentence
     */
    byte[] awaitBytes() throws IOException {
        while (!closed) {
            long start = System.nanoTime();
            int count = port.readBytes(chunk, chunk.length);
            boolean isGone = silence.isGone(count, System.nanoTime() - start);
            if (count > 0) {
                return Arrays.copyOf(chunk, count);
            }
            if (isGone && !closed) {
                throw SerialTrouble.gone(name);
            }
        }
        return new byte[0];
    }

    /**
     * Writes all of {@code bytes}, however long the line takes for it.
     *
     * @throws IOException if the line is gone or was closed meanwhile; the message is a sentence
     */
    void write(byte[] bytes) throws IOException {
        int done = 0;
        while (done < bytes.length) {
            int count = port.writeBytes(bytes, bytes.length - done, done);
            if (count <= 0 || closed) {
                throw SerialTrouble.gone(name);
            }
            done += count;
        }
    }

    /** Gives the line back to the system. Idempotent; frees a read and a write that wait. */
    void close() {
        closed = true;
        SerialPort opened = port;
        if (opened != null) {
            opened.closePort();
        }
    }
}
