package ouzel.app.desk;

import java.util.Arrays;
import java.util.Optional;
import ouzel.app.estimate.Series;
import ouzel.app.estimate.ValveReading;
import ouzel.protocol.message.ValveWaveform;

/**
 * One soil stroke as it is seen.
 *
 * @param orderId the trigger that started it, 0 if only a waveform was heard
 * @param started when the console learnt that it started
 * @param capture number of the waveform capture
 * @param expected samples in the whole capture, 0 before the first piece came
 * @param coil coil current from the instant the valve was switched on, mA, 2 000 samples a second;
 *     {@link #NOT_YET} where a piece is missing
 * @param reading what the whole waveform says, empty until it is complete
 */
public record Stroke(
        long orderId, Moment started, int capture, int expected, Series coil, Optional<ValveReading> reading) {

    /** Stands in {@link #coil} for a sample that has not come yet. */
    public static final int NOT_YET = -1;

    /** A stroke of which nothing was seen yet. */
    static Stroke unseen(long orderId, Moment started) {
        return new Stroke(orderId, started, -1, 0, Series.empty(), Optional.empty());
    }

    /** This stroke with one more piece of its waveform; pieces may come in any order and more than once. */
    Stroke with(ValveWaveform piece) {
        int[] samples = new int[piece.total()];
        Arrays.fill(samples, NOT_YET);
        if (capture == piece.capture() && expected == piece.total()) {
            System.arraycopy(coil.toArray(), 0, samples, 0, samples.length);
        }
        for (int i = 0; i < piece.milliamps().size(); i++) {
            samples[piece.firstSample() + i] = piece.milliamps().get(i);
        }
        Series all = Series.of(samples);
        boolean whole = Arrays.stream(samples).allMatch(sample -> sample != NOT_YET);
        return new Stroke(
                orderId,
                started,
                piece.capture(),
                piece.total(),
                all,
                whole ? Optional.of(ValveReading.of(all)) : Optional.empty());
    }

    /** True once every piece of the waveform has come. */
    public boolean isComplete() {
        return reading.isPresent();
    }
}
