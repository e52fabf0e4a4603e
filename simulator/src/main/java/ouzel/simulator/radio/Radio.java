package ouzel.simulator.radio;

import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;
import java.util.SplittableRandom;

/**
 * One direction of a radio link in virtual time: chunks of bytes go in, and come out later, twice, damaged or not at
 * all, as weather and seed have it.
 *
 * <p>Each chunk first waits for the serial line (57 600 baud, ten bits a byte, in order), then goes through the air. A
 * chunk stays in one piece: give it a whole frame to lose whole frames. Losses come in bursts from a chain with two
 * states, good and bad. The same weather, seed and calls give the same bytes at the same times.
 *
 * <p>Time is what the caller says, in ms, and must not run backwards. Thread: any one at a time.
 */
public final class Radio {
    /** Speed of the serial line, bits a second. */
    public static final int BAUD = 57_600;
    /** Bytes the modem keeps while the serial line is busy; what comes on top is refused. */
    public static final int BUFFER_BYTES = 4_096;

    private static final int BITS_PER_BYTE_ON_LINE = 10;
    private static final long MICROS_PER_MILLI = 1_000;
    private static final long MICROS_PER_SECOND = 1_000_000;
    private static final int REPEAT_AFTER_MILLIS = 60;

    private final SplittableRandom random;
    private final PriorityQueue<Chunk> air = new PriorityQueue<>();
    private Weather weather;
    private boolean bad;
    private long lineBusyUntilMicros;
    private long newestInOrderMicros;
    private long order;
    private long offered;
    private long overflowed;
    private long lost;
    private long duplicated;
    private long corrupted;
    private long reordered;
    private long heldBack;
    private long delivered;

    public Radio(Weather weather, long seed) {
        this.weather = weather;
        this.random = new SplittableRandom(seed);
    }

    /** Changes the weather for what is sent from now on. */
    public void weather(Weather next) {
        weather = next;
    }

    /** Gives the modem a chunk to send; the radio keeps a copy of {@code bytes}. */
    public void send(long nowMillis, byte[] bytes) {
        offered++;
        long nowMicros = nowMillis * MICROS_PER_MILLI;
        long startMicros = Math.max(nowMicros, lineBusyUntilMicros);
        if (startMicros - nowMicros + lineMicros(bytes.length) > lineMicros(BUFFER_BYTES)) {
            overflowed++;
            return;
        }
        lineBusyUntilMicros = startMicros + lineMicros(bytes.length);
        boolean gone = nextIsLost() | weather.isOut(lineBusyUntilMicros / MICROS_PER_MILLI);
        if (gone) {
            lost++;
        } else {
            fly(lineBusyUntilMicros, bytes);
        }
    }

    /** The chunks that have arrived by {@code nowMillis} and were not handed out before, in order of arrival. */
    public List<byte[]> receive(long nowMillis) {
        Chunk first = air.peek();
        if (first == null || first.dueMicros > nowMillis * MICROS_PER_MILLI) {
            return List.of();
        }
        List<byte[]> due = new ArrayList<>();
        while (!air.isEmpty() && air.peek().dueMicros <= nowMillis * MICROS_PER_MILLI) {
            due.add(air.remove().bytes);
        }
        delivered += due.size();
        return due;
    }

    /** Time a chunk of {@code bytes} takes on the serial line, microseconds. */
    public static long lineMicros(int bytes) {
        return (long) bytes * BITS_PER_BYTE_ON_LINE * MICROS_PER_SECOND / BAUD;
    }

    /** What became of the chunks so far. */
    public Tally tally() {
        return new Tally(offered, overflowed, lost, duplicated, corrupted, reordered, heldBack, delivered);
    }

    /** Copies still under way. */
    public int underWay() {
        return air.size();
    }

    /**
     * One step of the chain. Leaving the bad state with 1 / burst makes bursts that long on average; entering it with
     * the rate below makes the share of bad steps the loss ratio.
     */
    private boolean nextIsLost() {
        double leaveBad = 1 / weather.meanBurst();
        double enterBad = leaveBad * weather.lossRatio() / (1 - weather.lossRatio());
        bad = bad ? random.nextDouble() >= leaveBad : random.nextDouble() < enterBad;
        return bad;
    }

    private void fly(long sentMicros, byte[] bytes) {
        long dueMicros = sentMicros + delayMicros();
        if (random.nextDouble() < weather.holdBackRatio()) {
            heldBack++;
            dueMicros += uniform(weather.mostHoldBackMillis() / 2, weather.mostHoldBackMillis());
        } else if (random.nextDouble() < weather.reorderRatio()) {
            reordered++;
            dueMicros += weather.mostDelayMillis() * MICROS_PER_MILLI;
        } else {
            dueMicros = Math.max(dueMicros, newestInOrderMicros);
            newestInOrderMicros = dueMicros;
        }
        arrive(dueMicros, bytes);
        if (random.nextDouble() < weather.duplicateRatio()) {
            duplicated++;
            arrive(dueMicros + uniform(0, REPEAT_AFTER_MILLIS), bytes);
        }
    }

    private void arrive(long dueMicros, byte[] bytes) {
        air.add(new Chunk(dueMicros, order++, weather.bitErrorRatio() > 0 ? damaged(bytes) : bytes.clone()));
    }

    /** A copy with its share of bits flipped: the distance to the next flipped bit is drawn, not each bit. */
    private byte[] damaged(byte[] bytes) {
        byte[] copy = bytes.clone();
        double perBit = Math.log1p(-weather.bitErrorRatio());
        long bits = 8L * copy.length;
        long at = skip(perBit);
        corrupted += at < bits ? 1 : 0;
        while (at < bits) {
            copy[(int) (at / 8)] ^= (byte) (1 << at % 8);
            at += 1 + skip(perBit);
        }
        return copy;
    }

    private long skip(double perBit) {
        return (long) (Math.log(1 - random.nextDouble()) / perBit);
    }

    private long delayMicros() {
        return uniform(weather.leastDelayMillis(), weather.mostDelayMillis());
    }

    private long uniform(int leastMillis, int mostMillis) {
        long least = leastMillis * MICROS_PER_MILLI;
        return least + (long) (random.nextDouble() * (mostMillis - leastMillis) * MICROS_PER_MILLI);
    }

    private record Chunk(long dueMicros, long order, byte[] bytes) implements Comparable<Chunk> {
        @Override
        public int compareTo(Chunk other) {
            int byTime = Long.compare(dueMicros, other.dueMicros);
            return byTime != 0 ? byTime : Long.compare(order, other.order);
        }
    }
}
