package ouzel.app.desk;

/**
 * What a named person confirmed, and until when it counts.
 *
 * @param condition what
 * @param person who
 * @param since when
 */
public record Attestation(Condition condition, String person, Moment since) {
    /** Seconds it still holds at {@code now}; 0 or less when it has run out. */
    public int secondsLeft(Moment now) {
        return (int) Math.ceil(condition.attestedForSeconds() - now.secondsSince(since));
    }
}
