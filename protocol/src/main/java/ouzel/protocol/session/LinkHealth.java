package ouzel.protocol.session;

/**
 * How well the link works.
 *
 * @param heard frames heard from the session's payload
 * @param lost frames that its sequence numbers say are missing
 * @param deliveryRatio heard / (heard + lost) over the last 10 s, 0 to 1; NaN before the first frame
 * @param corrupt frames dropped for bad stuffing, checksum or length
 * @param roundTripMillis median time from an order to its first outcome, ms; NaN before the first
 */
public record LinkHealth(long heard, long lost, double deliveryRatio, long corrupt, double roundTripMillis) {
    /** Nothing measured yet. */
    public static final LinkHealth NONE = new LinkHealth(0, 0, Double.NaN, 0, Double.NaN);
}
