package ouzel.protocol.message;

import java.nio.charset.StandardCharsets;

/**
 * Who this payload is and what it can do; sent on request to open and every 2 s.
 *
 * @param firmware name and version of the controller's program, at most 24 bytes of ASCII
 * @param capabilities bits of {@link Capability}
 * @param bootCount starts of this controller since it was made, unsigned 32 bits
 * @param settingsCheck CRC-16/IBM-3740 over the settings block as it stands on board
 * @param simulated true if no real thing can move: a rehearsal payload
 */
public record Identity(String firmware, int capabilities, long bootCount, int settingsCheck, boolean simulated)
        implements Downlink {
    /** Longest firmware name, bytes. */
    public static final int LONGEST_FIRMWARE_NAME = 24;

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public Identity {
        if (!StandardCharsets.US_ASCII.newEncoder().canEncode(firmware) || firmware.length() > LONGEST_FIRMWARE_NAME) {
            throw new IllegalArgumentException(
                    "firmware : " + firmware + " (expected: at most " + LONGEST_FIRMWARE_NAME + " ASCII characters)");
        }
        Checks.unsigned32("bootCount", bootCount);
        Checks.unsigned16("settingsCheck", settingsCheck);
    }

    /** True if this payload has {@code capability}. */
    public boolean has(Capability capability) {
        return (capabilities & capability.bit()) != 0;
    }
}
