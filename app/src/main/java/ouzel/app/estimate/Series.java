package ouzel.app.estimate;

import java.util.Arrays;
import java.util.List;

/**
 * An immutable run of equally spaced samples that is cheap to lengthen.
 *
 * <p>{@link #append} gives a longer series that shares this one's storage; only when one series is lengthened twice is
 * the storage copied. A reader on another thread may keep any series it was handed.
 *
 * <p>Thread: any, once published safely; lengthen from one thread.
 */
public final class Series {
    private static final Series EMPTY = new Series(new Storage(64), 0);

    private final Storage storage;
    private final int length;

    /** Samples that several series see; {@code used} tells which series may lengthen it in place. */
    private static final class Storage {
        private int[] values;
        private int used;

        private Storage(int capacity) {
            values = new int[capacity];
        }
    }

    private Series(Storage storage, int length) {
        this.storage = storage;
        this.length = length;
    }

    public static Series empty() {
        return EMPTY;
    }

    /** A series of its own over a copy of {@code samples}. */
    public static Series of(int... samples) {
        Storage storage = new Storage(samples.length);
        System.arraycopy(samples, 0, storage.values, 0, samples.length);
        storage.used = samples.length;
        return new Series(storage, samples.length);
    }

    public int length() {
        return length;
    }

    /**
     * The sample at {@code index}.
     *
     * @throws IndexOutOfBoundsException if {@code index} is not within 0 to {@link #length()} - 1
     */
    public int at(int index) {
        if (index < 0 || index >= length) {
            throw new IndexOutOfBoundsException("index : " + index + " (expected: 0 to " + (length - 1) + ")");
        }
        return storage.values[index];
    }

    /** This series with {@code more} behind it; costs only the new samples unless it was lengthened before. */
    public Series append(List<Integer> more) {
        Storage target = storage;
        int needed = length + more.size();
        if (this == EMPTY || target.used != length || target.values.length < needed) {
            target = new Storage(Math.max(64, Math.max(needed, length * 2)));
            System.arraycopy(storage.values, 0, target.values, 0, length);
        }
        for (int i = 0; i < more.size(); i++) {
            target.values[length + i] = more.get(i);
        }
        target.used = needed;
        return new Series(target, needed);
    }

    /** A copy of the samples. */
    public int[] toArray() {
        return Arrays.copyOf(storage.values, length);
    }
}
