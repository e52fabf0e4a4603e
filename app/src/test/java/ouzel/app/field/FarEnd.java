package ouzel.app.field;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameParser;

/** The far end of a cable that a test writes by hand: it says what it is told to say, and remembers what it heard. */
final class FarEnd implements AutoCloseable {
    private final ServerSocket door;
    private final List<Frame> heard = new CopyOnWriteArrayList<>();
    private final List<Socket> lines = new CopyOnWriteArrayList<>();

    FarEnd() {
        try {
            door = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        start("test door", this::letIn);
    }

    private static void start(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }

    private void letIn() {
        try {
            while (true) {
                Socket line = door.accept();
                lines.add(line);
                start("test peer", () -> listen(line));
            }
        } catch (IOException closed) {
            // The test is over.
        }
    }

    private void listen(Socket line) {
        FrameParser parser = new FrameParser();
        byte[] chunk = new byte[256];
        try {
            for (int count = line.getInputStream().read(chunk);
                    count > 0;
                    count = line.getInputStream().read(chunk)) {
                parser.feed(Arrays.copyOf(chunk, count), heard::add);
            }
        } catch (IOException pulled) {
            // The plug is out.
        }
    }

    int port() {
        return door.getLocalPort();
    }

    List<Frame> heard() {
        return heard;
    }

    /** How often a cable was plugged in. */
    int plugs() {
        return lines.size();
    }

    /** Says {@code bytes} on the newest line. */
    void say(byte[] bytes) {
        try {
            OutputStream out = lines.get(lines.size() - 1).getOutputStream();
            out.write(bytes);
            out.flush();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    @Override
    public void close() {
        try {
            door.close();
            for (Socket line : lines) {
                line.close();
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
