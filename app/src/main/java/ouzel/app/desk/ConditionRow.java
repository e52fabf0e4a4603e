package ouzel.app.desk;

/**
 * One condition as it stands, with all that the operator needs to act on it.
 *
 * @param condition which
 * @param holding whether it holds
 * @param value what is known, with its unit, for example "11.2°"; "no data" if nothing is
 * @param limit what it is held against, for example "≤ 8.0°"; empty if there is none
 * @param evidence how it is known
 * @param ageMillis age of the value, ms; 0 for computed ones
 * @param payload what the payload says of it
 * @param person who attested it, empty if nobody
 * @param expiresInSeconds how long the attestation still holds, s; 0 if there is none
 */
public record ConditionRow(
        Condition condition,
        Holding holding,
        String value,
        String limit,
        Evidence evidence,
        long ageMillis,
        PayloadSays payload,
        String person,
        int expiresInSeconds) {

    /** Whether a condition holds; what is not known does not hold. */
    public enum Holding {
        /** It holds. */
        MET,
        /** It does not. */
        UNMET,
        /** No data, or data too old to trust: counts as not met. */
        UNKNOWN
    }

    /** The payload's own opinion. */
    public enum PayloadSays {
        /** The payload says it holds. */
        MET,
        /** The payload says it does not hold. */
        UNMET,
        /** The payload has no opinion, or its last word is too old. */
        NOTHING
    }

    /** True if arming may go on as far as this row is concerned. */
    public boolean isMet() {
        return holding == Holding.MET;
    }

    /** True if console and payload disagree: the screen shows both. */
    public boolean isDisputed() {
        return payload != PayloadSays.NOTHING && isMet() != (payload == PayloadSays.MET) && holding != Holding.UNKNOWN;
    }

    /** Value against limit, as in a refusal: "11.2° (limit ≤ 8.0°)"; says so where the payload does not agree yet. */
    public String valueAgainstLimit() {
        String own = limit.isEmpty() ? value : value + " (limit " + limit + ")";
        return isMet() && payload == PayloadSays.UNMET ? own + ", but the payload says not yet" : own;
    }
}
