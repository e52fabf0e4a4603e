package ouzel.protocol.message;

/** Why the payload refused or ended something. The wire carries the code; the words are the console's. */
public enum Reason {
    /** Nothing to add. */
    NONE(0),
    /** A permissive does not hold; the outcome names it with what was measured and the limit. */
    PERMISSIVE(1),
    /** The sampler is not armed. */
    NOT_ARMED(2),
    /** The token is not the one that was given, or was used. */
    WRONG_TOKEN(3),
    /** The arming token ran out; measured: its age, limit: its life, ms. */
    TOKEN_EXPIRED(4),
    /** The order arrived later than it was meant to act; measured: how late, limit: 0, ms. */
    ORDER_EXPIRED(5),
    /** The order's expiry lies too far ahead to be true; measured: how far, limit: the most allowed, ms. */
    ORDER_FROM_FUTURE(6),
    /** Another sampler is armed or acting. */
    OTHER_ACTIVE(7),
    /** The container or probe is used. */
    SAMPLER_USED(8),
    /** The sampler is in fault until a person reloads it. */
    SAMPLER_FAULT(9),
    /** The asked dose passes the limit on board; measured: asked, limit: allowed. */
    DOSE_OVER_LIMIT(10),
    /** This payload has no such sampler. */
    NOT_FITTED(11),
    /** A settings block passes a ceiling on board; measured: asked, limit: allowed. */
    SETTING_OVER_CEILING(12),
    /** The sampler cannot be reloaded while it acts or is armed. */
    BUSY(13),
    /** Asked by the operator. */
    BY_STOP(14),
    /** Ended by safe-all. */
    BY_SAFE_ALL(15),
    /** The keep-alive stayed away; measured: silence, limit: allowed, ms. */
    KEEP_ALIVE_LOST(16),
    /** The dose was reached. */
    DOSE_REACHED(17),
    /** The jar's level switch closed. */
    JAR_FULL(18),
    /** The bag's pressure reached its stop limit; measured and limit: Pa. */
    BAG_FULL(19),
    /** The longest run was reached; measured and limit: ms. */
    RUN_LIMIT(20),
    /** The pump's current passed its hard limit; measured and limit: mA. */
    OVER_CURRENT(21),
    /** No current flows though the pump is switched on; measured and limit: mA. */
    NO_CURRENT(22),
    /** The battery sagged below its trip; measured and limit: mV. */
    BATTERY_SAG(23),
    /** The probe did not leave its home switch. */
    PROBE_STAYED(24),
    /** The probe did not come home in time; measured and limit: ms. */
    PROBE_AWAY(25),
    /** The controller restarted in the middle of it. */
    RESTARTED(26),
    /** A new session was opened. */
    NEW_SESSION(27);

    private final int code;

    Reason(int code) {
        this.code = code;
    }

    /** The byte that stands for this reason on the wire. */
    public int code() {
        return code;
    }
}
