package ouzel.protocol.message;

/**
 * Something that happened on board, kept there until the console has acknowledged it.
 *
 * @param number counts up by one for each event of this payload's life, from 1, unsigned 32 bits
 * @param bootCount the start of the controller in which it happened, unsigned 32 bits
 * @param timeMillis the payload's clock then, ms since that start, unsigned 32 bits
 * @param kind what happened
 * @param sampler whose event; {@link Sampler#WATER} where none is concerned
 * @param orderId the order that caused it, 0 if none, unsigned 32 bits
 * @param reason why, {@link Reason#NONE} if there is nothing to add
 * @param value a figure that belongs to the kind: see {@link Kind}
 */
public record Event(
        long number,
        long bootCount,
        long timeMillis,
        Kind kind,
        Sampler sampler,
        long orderId,
        Reason reason,
        int value)
        implements Downlink {

    /** What kinds of events there are, and what their value means. */
    public enum Kind {
        /** The controller started; value: 0 power, 1 brown-out, 2 watchdog. */
        BOOTED(0, false),
        /** A session was opened; value: 0. */
        SESSION_OPENED(1, false),
        /** A sampler was armed; value: token life, ms. */
        ARMED(2, true),
        /**
         * An armed sampler went safe without being triggered; value: the permissive's wire code where the reason is
         * {@link Reason#PERMISSIVE}, else 0.
         */
        DISARMED(3, true),
        /** A pump was started; value: asked dose, mL. */
        DRAW_STARTED(4, true),
        /** A pump was switched off with its dose reached; value: metered dose, mL. */
        DRAW_COMPLETED(5, true),
        /** A pump was switched off before its dose was reached; value: metered dose, mL. */
        DRAW_ENDED_EARLY(6, true),
        /** The valve was opened; value: asked opening, ms. */
        STROKE_STARTED(7, true),
        /** The probe went away from home and came back; value: time from opening to home again, ms. */
        STROKE_COMPLETED(8, true),
        /** The stroke went wrong; value: time from opening, ms. */
        STROKE_FAILED(9, true),
        /** A fault on board that concerns a sampler; value: what was measured. */
        FAULT(10, true),
        /** Safe-all was carried out; value: time from its arrival to all outputs off, ms. */
        SAFED(11, false),
        /** A person recorded a fresh container or probe; value: 0. */
        RELOADED(12, true),
        /** Settings were changed; value: the new settings check. */
        SETTINGS_CHANGED(13, false),
        /** The keep-alive stayed away; value: silence, ms. */
        KEEP_ALIVE_LOST(14, false),
        /** Older events were dropped because the store was full; value: how many. */
        EVENTS_DROPPED(15, false);

        private final int code;
        private final boolean ofSampler;

        Kind(int code, boolean ofSampler) {
            this.code = code;
            this.ofSampler = ofSampler;
        }

        /** The byte that stands for this kind on the wire. */
        public int code() {
            return code;
        }

        /** True if the event's sampler means anything. */
        public boolean isOfSampler() {
            return ofSampler;
        }
    }

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public Event {
        Checks.unsigned32("number", number);
        Checks.unsigned32("bootCount", bootCount);
        Checks.unsigned32("timeMillis", timeMillis);
        Checks.unsigned32("orderId", orderId);
    }
}
