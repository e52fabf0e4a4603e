package ouzel.app.desk;

import java.util.Optional;
import ouzel.app.estimate.Series;
import ouzel.app.estimate.ValveReading;

/**
 * One soil stroke as it is seen.
 *
 * @param orderId the trigger that started it, 0 if only a waveform was heard
 * @param started when the console learnt that it started
 * @param capture number of the waveform capture
 * @param expected samples in the whole capture, 0 before the first piece came
 * @param coil coil current from the instant the valve was switched on, mA, 2 000 samples a second; what has come so far
 * @param reading what the whole waveform says, empty until it is complete
 */
public record Stroke(
        long orderId, Moment started, int capture, int expected, Series coil, Optional<ValveReading> reading) {

    /** True once every piece of the waveform has come. */
    public boolean isComplete() {
        return expected > 0 && coil.length() == expected;
    }
}
