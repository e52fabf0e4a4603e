package ouzel.protocol.message;

/**
 * "We do not speak the same protocol": the answer to a frame of another major version.
 *
 * @param spoken the version byte this payload speaks
 * @param heard the version byte it was addressed in
 */
public record VersionRefusal(int spoken, int heard) implements Downlink {

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public VersionRefusal {
        Checks.unsigned8("spoken", spoken);
        Checks.unsigned8("heard", heard);
    }
}
