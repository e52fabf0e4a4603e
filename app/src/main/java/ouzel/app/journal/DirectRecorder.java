package ouzel.app.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.function.Consumer;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;

/**
 * Writes a journal on the thread that appends, gathering records to larger writes: for sorties in virtual time, where
 * waiting for the disk delays nobody. Thread: desk.
 */
final class DirectRecorder implements Recorder {
    private final JournalStore store;
    private final Consumer<String> failed;
    private final ByteBuffer gathered = ByteBuffer.allocate(2 * JournalCodec.LONGEST_RECORD);
    private String failure = "";

    DirectRecorder(JournalStore store, Consumer<String> failed) {
        this.store = store;
        this.failed = failed;
    }

    @Override
    public void append(Moment at, Stimulus stimulus) {
        if (!failure.isEmpty()) {
            return;
        }
        try {
            byte[] record = JournalCodec.write(new Entry(at, stimulus));
            if (record.length > gathered.remaining()) {
                flush();
            }
            gathered.put(record);
        } catch (IOException trouble) {
            fail(trouble);
        }
    }

    @Override
    public void whenDurable(Runnable done, Consumer<String> notDone) {
        secure();
        if (failure.isEmpty()) {
            done.run();
        } else {
            notDone.accept(failure);
        }
    }

    @Override
    public void close() {
        if (failure.equals(WriteFailure.CLOSED)) {
            return;
        }
        secure();
        try {
            store.close();
        } catch (IOException trouble) {
            fail(trouble);
        }
        failure = WriteFailure.CLOSED;
    }

    private void secure() {
        if (!failure.isEmpty()) {
            return;
        }
        try {
            flush();
            store.force();
        } catch (IOException trouble) {
            fail(trouble);
        }
    }

    private void flush() throws IOException {
        store.write(gathered.flip());
        gathered.clear();
    }

    private void fail(IOException trouble) {
        if (failure.isEmpty()) {
            failure = WriteFailure.sentence(store.name(), trouble);
            failed.accept(failure);
        }
    }
}
