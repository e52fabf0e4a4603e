package ouzel.protocol.message;

/**
 * How far an order came. Sent at each step, stored on board, and sent again when the order or a question about it
 * arrives again.
 *
 * @param orderId the order, unsigned 32 bits
 * @param stage how far it came
 * @param reason why it was refused or failed, or how it ended
 * @param permissive the unmet permissive's wire code where reason is {@link Reason#PERMISSIVE}, else
 *     {@link #NO_PERMISSIVE}
 * @param measured what was measured, in the unit of the permissive or reason
 * @param limit the limit it was held against, same unit
 * @param token the arming token where an {@link Arm} order was completed, else 0
 * @param tokenLifeMillis how long that token lives from now on the payload's clock, ms, else 0
 */
public record Outcome(
        long orderId,
        Stage stage,
        Reason reason,
        int permissive,
        int measured,
        int limit,
        long token,
        int tokenLifeMillis)
        implements Downlink {

    /** Stands for "no permissive". */
    public static final int NO_PERMISSIVE = 0xFF;

    /** How far an order came; the first four are the stages of verification that space telecommand uses. */
    public enum Stage {
        /** Authentic, in time and allowed. */
        ACCEPTED(0),
        /** Its effect has begun. */
        STARTED(1),
        /** Under way; measured: amount so far. */
        PROGRESS(2),
        /** Done, proven by what was measured. */
        COMPLETED(3),
        /** Not carried out; nothing moved. */
        REFUSED(4),
        /** Begun but not completed. */
        FAILED(5),
        /** Answer to a question about an order that never arrived here. */
        NEVER_SEEN(6);

        private final int code;

        Stage(int code) {
            this.code = code;
        }

        /** The byte that stands for this stage on the wire. */
        public int code() {
            return code;
        }

        /** True if nothing more will be said about the order. */
        public boolean isFinal() {
            return this == COMPLETED || this == REFUSED || this == FAILED || this == NEVER_SEEN;
        }
    }

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public Outcome {
        Checks.unsigned32("orderId", orderId);
        Checks.unsigned8("permissive", permissive);
        Checks.unsigned16("tokenLifeMillis", tokenLifeMillis);
    }

    /** An outcome with nothing to add. */
    public static Outcome of(long orderId, Stage stage) {
        return because(orderId, stage, Reason.NONE, 0, 0);
    }

    /** An outcome with its reason and the figures that belong to it. */
    public static Outcome because(long orderId, Stage stage, Reason reason, int measured, int limit) {
        return new Outcome(orderId, stage, reason, NO_PERMISSIVE, measured, limit, 0, 0);
    }

    /** A refusal that names the permissive that does not hold. */
    public static Outcome unmet(long orderId, Permissive permissive, int measured, int limit) {
        return new Outcome(orderId, Stage.REFUSED, Reason.PERMISSIVE, permissive.code(), measured, limit, 0, 0);
    }

    /** The completed outcome of an {@link Arm} order. */
    public static Outcome armed(long orderId, long token, int tokenLifeMillis) {
        return new Outcome(orderId, Stage.COMPLETED, Reason.NONE, NO_PERMISSIVE, 0, 0, token, tokenLifeMillis);
    }
}
