package ouzel.protocol.session;

/**
 * How well the link works.
 *
 * <p>"Lately" is the window of the {@link LinkStatistics} that measured, 10 s unless it was made with another. What was
 * not measured yet is NaN.
 *
 * @param heard frames heard from the session's payload
 * @param lost frames that its sequence numbers say are missing
 * @param deliveryRatio heard / (heard + lost) lately, 0 to 1; NaN before the first frame
 * @param corrupt frames dropped for bad stuffing, checksum or length
 * @param roundTripMillis median time from an order to its first outcome, ms; NaN before the first
 * @param deliveryLow lower end of the delivery ratio's 95 % interval, 0 to 1
 * @param deliveryHigh upper end of it, 0 to 1
 * @param roundTripHighMillis time that 95 % of the round trips stay within, ms
 * @param longestGapMillis longest time without a good frame lately, the time since the last one included, ms
 * @param lastFrameAgeMillis time since the last good frame, ms
 * @param bytesDownPerSecond bytes of good frames from the payload lately, with their framing
 * @param bytesUpPerSecond bytes sent to the payload lately, with their framing
 * @param refused frames that the payload refused since its start: forged, replayed, malformed or astray
 * @param clockOffsetMillis the payload's clock minus the console's frame clock, ms, modulo 2^32 and signed
 * @param clockUncertaintyMillis how far that may be off either way, ms
 */
public record LinkHealth(
        long heard,
        long lost,
        double deliveryRatio,
        long corrupt,
        double roundTripMillis,
        double deliveryLow,
        double deliveryHigh,
        double roundTripHighMillis,
        double longestGapMillis,
        double lastFrameAgeMillis,
        double bytesDownPerSecond,
        double bytesUpPerSecond,
        long refused,
        double clockOffsetMillis,
        double clockUncertaintyMillis) {
    /** What a 57 600 baud line with a start and a stop bit carries, bytes/s. */
    public static final double LINE_BYTES_PER_SECOND = 5_760;

    private static final double UNKNOWN = Double.NaN;

    /** Nothing measured yet. */
    public static final LinkHealth NONE = counted(0, 0, UNKNOWN, 0, UNKNOWN);

    /** The counts and medians alone, all else not measured. */
    public static LinkHealth counted(
            long heard, long lost, double deliveryRatio, long corrupt, double roundTripMillis) {
        return new LinkHealth(
                heard,
                lost,
                deliveryRatio,
                corrupt,
                roundTripMillis,
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                UNKNOWN,
                0,
                UNKNOWN,
                UNKNOWN);
    }

    /** Share of the radio's air time that both directions use together, 0 to 1 and above; NaN if not measured. */
    public double airTimeShare() {
        return (bytesDownPerSecond + bytesUpPerSecond) / LINE_BYTES_PER_SECOND;
    }
}
