package ouzel.protocol.message;

/**
 * What only the holder of the session key can say. Each travels in an envelope of session counter, order id, expiry on
 * the payload's clock and message tag; see {@code PROTOCOL.md}.
 */
public sealed interface Order extends Uplink
        permits Confirm,
                KeepAlive,
                Arm,
                Trigger,
                Stop,
                SafeAll,
                Reload,
                ChangeSettings,
                ReadSettings,
                AcknowledgeEvents,
                FetchEvents,
                QueryOutcome {

    /** True for the two orders that may move something: these expire soonest and are never repeated blindly. */
    default boolean isHazardous() {
        return this instanceof Arm || this instanceof Trigger;
    }
}
