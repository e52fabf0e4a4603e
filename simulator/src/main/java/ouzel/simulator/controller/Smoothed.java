package ouzel.simulator.controller;

/** The mean of the last {@value #LENGTH} readings: takes ripple and noise off a motor's current. */
final class Smoothed {
    private static final int LENGTH = 8;

    private final int[] readings = new int[LENGTH];
    private int next;
    private int count;
    private int sum;

    int take(int reading) {
        sum += reading - readings[next];
        readings[next] = reading;
        next = (next + 1) % LENGTH;
        count = Math.min(count + 1, LENGTH);
        return sum / count;
    }
}
