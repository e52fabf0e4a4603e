package ouzel.app.journal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;

/** A disk in memory that writes down what it was asked, holds at most so many bytes, and can be made to stand still. */
final class FakeStore implements JournalStore {
    private final ByteArrayOutputStream written = new ByteArrayOutputStream();
    private final List<String> calls = new ArrayList<>();
    private final int room;
    private CountDownLatch turning = new CountDownLatch(0);
    private int forced;

    FakeStore(int room) {
        this.room = room;
    }

    /** A disk that does nothing until the latch it gives is counted down. */
    CountDownLatch standStill() {
        turning = new CountDownLatch(1);
        return turning;
    }

    @Override
    public void write(ByteBuffer bytes) throws IOException {
        await();
        synchronized (this) {
            if (written.size() + bytes.remaining() > room) {
                throw new IOException("No space left on device");
            }
            calls.add("write " + bytes.remaining());
            while (bytes.hasRemaining()) {
                written.write(bytes.get());
            }
        }
    }

    @Override
    public synchronized void force() {
        forced = written.size();
        calls.add("force");
    }

    @Override
    public synchronized void close() {
        calls.add("close");
    }

    @Override
    public String name() {
        return "/disk/sortie.ouzel";
    }

    /** Notes something that another party did, in turn with the calls. */
    synchronized void note(String call) {
        calls.add(call);
    }

    synchronized List<String> calls() {
        return List.copyOf(calls);
    }

    synchronized byte[] written() {
        return written.toByteArray();
    }

    synchronized int forced() {
        return forced;
    }

    private void await() throws IOException {
        try {
            turning.await();
        } catch (InterruptedException interrupted) {
            throw new IOException("interrupted", interrupted);
        }
    }
}
