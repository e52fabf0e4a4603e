package ouzel.protocol.message;

import java.util.List;

/**
 * A piece of the coil current captured from the instant a valve was switched on, 2 000 samples a second.
 *
 * @param sampler whose valve
 * @param capture counts captures since power-up, so that pieces of two captures are never mixed, 0 to 65 535
 * @param total samples in the whole capture, at most 400
 * @param firstSample index of this piece's first sample
 * @param milliamps the samples, 1 to 100, each 0 to 65 534 mA
 */
public record ValveWaveform(Sampler sampler, int capture, int total, int firstSample, List<Integer> milliamps)
        implements Downlink {
    /** Samples a second. */
    public static final int RATE_HZ = 2_000;
    /** Most samples in one piece. */
    public static final int MOST_SAMPLES = 100;
    /** Most samples in one capture. */
    public static final int LONGEST_CAPTURE = 400;

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public ValveWaveform {
        Checks.unsigned16("capture", capture);
        Checks.range("total", total, 1, LONGEST_CAPTURE);
        Checks.range("firstSample", firstSample, 0, total - 1);
        Checks.range("milliamps.size", milliamps.size(), 1, Math.min(MOST_SAMPLES, total - firstSample));
        milliamps.forEach(sample -> Checks.range("milliamps", sample, 0, 0xFFFE));
        milliamps = List.copyOf(milliamps);
    }
}
