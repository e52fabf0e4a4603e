package ouzel.protocol.message;

import java.util.List;

/**
 * A batch of pump current samples, 100 a second while a pump runs and for half a second after.
 *
 * @param sampler whose pump
 * @param firstSample index of the first sample since the pump was switched on, unsigned 32 bits
 * @param milliamps the samples, 1 to 40, each 0 to 65 534 mA
 */
public record CurrentTrace(Sampler sampler, long firstSample, List<Integer> milliamps) implements Downlink {
    /** Samples a second. */
    public static final int RATE_HZ = 100;
    /** Most samples in one message. */
    public static final int MOST_SAMPLES = 40;

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public CurrentTrace {
        Checks.unsigned32("firstSample", firstSample);
        Checks.range("milliamps.size", milliamps.size(), 1, MOST_SAMPLES);
        milliamps.forEach(sample -> Checks.range("milliamps", sample, 0, 0xFFFE));
        milliamps = List.copyOf(milliamps);
    }
}
