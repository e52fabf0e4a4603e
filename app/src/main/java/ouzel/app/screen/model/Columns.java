package ouzel.app.screen.model;

import ouzel.app.estimate.Series;

/**
 * A stretch of an equally spaced series, thinned to what a plot of so many pixel columns can show. A negative sample
 * stands for one that has not come and is left out.
 *
 * <p>Where a column holds more than two samples only its least and its greatest are kept, in the order they came, so
 * that no spike is lost and the cost does not grow with the length of the draw.
 *
 * <pre>
 *   samples   . . : . | . ' . .  | ...        column k keeps min and max
 *   columns      k    |   k + 1  |
 * </pre>
 */
public final class Columns {
    /** Nothing to draw. */
    public static final Columns NONE = new Columns(new double[0], new double[0], 0);

    private final double[] seconds;
    private final double[] values;
    private final int count;

    private Columns(double[] seconds, double[] values, int count) {
        this.seconds = seconds;
        this.values = values;
        this.count = count;
    }

    /**
     * The samples of {@code series} between {@code from} and {@code to}.
     *
     * @param samplesPerSecond rate of the series; sample 0 stands at 0 s
     * @param divisor what a sample is divided by to give the plotted unit
     * @param columns pixel columns, at least 1
     */
    public static Columns of(Series series, int samplesPerSecond, double divisor, double from, double to, int columns) {
        int first = (int) Math.max(0, Math.ceil(from * samplesPerSecond));
        int last = (int) Math.min(series.length() - 1.0, Math.floor(to * samplesPerSecond));
        int samples = last - first + 1;
        if (samples <= 0) {
            return NONE;
        }
        int wide = Math.max(1, columns);
        return samples <= 2 * wide
                ? every(series, samplesPerSecond, divisor, first, samples)
                : extremes(series, samplesPerSecond, divisor, first, last, wide);
    }

    private static Columns every(Series series, int rate, double divisor, int first, int samples) {
        double[] seconds = new double[samples];
        double[] values = new double[samples];
        int count = 0;
        for (int i = first; i < first + samples; i++) {
            if (series.at(i) >= 0) {
                seconds[count] = i / (double) rate;
                values[count++] = series.at(i) / divisor;
            }
        }
        return new Columns(seconds, values, count);
    }

    private static Columns extremes(Series series, int rate, double divisor, int first, int last, int columns) {
        int samples = last - first + 1;
        double[] seconds = new double[2 * columns];
        double[] values = new double[2 * columns];
        int count = 0;
        for (int column = 0; column < columns; column++) {
            int start = first + (int) ((long) samples * column / columns);
            int end = first + (int) ((long) samples * (column + 1) / columns);
            int least = start;
            int most = start;
            for (int i = start + 1; i < end; i++) {
                least = series.at(i) < series.at(least) ? i : least;
                most = series.at(i) > series.at(most) ? i : most;
            }
            for (int kept : new int[] {Math.min(least, most), Math.max(least, most)}) {
                if (series.at(kept) >= 0) {
                    seconds[count] = kept / (double) rate;
                    values[count++] = series.at(kept) / divisor;
                }
            }
        }
        return new Columns(seconds, values, count);
    }

    /** The same points on a time axis with another unit. */
    public Columns scaled(double unitsPerSecond) {
        double[] times = new double[count];
        for (int i = 0; i < count; i++) {
            times[i] = seconds[i] * unitsPerSecond;
        }
        return new Columns(times, values, count);
    }

    /** Number of points. */
    public int count() {
        return count;
    }

    /** Time of a point, s; never decreasing. */
    public double seconds(int point) {
        return seconds[point];
    }

    /** Value of a point in the plotted unit. */
    public double value(int point) {
        return values[point];
    }
}
