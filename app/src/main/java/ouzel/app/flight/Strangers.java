package ouzel.app.flight;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import ouzel.protocol.session.Heard;

/**
 * Puts what does not belong on the line into words, says the same thing only once in a while, and few things in all:
 * somebody who invents a new stranger with every frame fills neither the journal nor the memory.
 */
final class Strangers {
    private static final long AGAIN_AFTER_NANOS = 30_000_000_000L;
    /** Different sentences in that time. */
    private static final int MOST_SENTENCES = 8;

    private final Map<String, Long> said = new HashMap<>();

    /** The sentence for {@code heard}; empty if it was said lately, or too much else was. */
    Optional<String> sentence(Heard heard, long nowNanos) {
        said.values().removeIf(last -> nowNanos - last >= AGAIN_AFTER_NANOS);
        if (said.size() >= MOST_SENTENCES) {
            return Optional.empty();
        }
        String words = words(heard);
        if (said.containsKey(words)) {
            return Optional.empty();
        }
        said.put(words, nowNanos);
        return Optional.of(words);
    }

    private static String words(Heard heard) {
        if (heard instanceof Heard.Foreign foreign) {
            return "Payload " + foreign.payload()
                    + " is on this line too. This desk does not listen to it; switch it off or change its channel.";
        }
        if (heard instanceof Heard.OtherVersion other) {
            return "The payload speaks protocol version " + version(other.heard()) + ", this console "
                    + version(other.spoken()) + ": bring both to the same version.";
        }
        if (heard instanceof Heard.WrongKey wrong) {
            return "Payload " + wrong.payload()
                    + " does not hold this console's pairing key: pair them again, or open the desk with --key FILE.";
        }
        if (heard instanceof Heard.Unreadable unreadable) {
            return String.format(
                    "A message of kind 0x%02X says nothing to this console: %s.", unreadable.kind(), unreadable.why());
        }
        throw new IllegalArgumentException("heard : " + heard + " (expected: a stranger)");
    }

    private static String version(int version) {
        return (version >> 4) + "." + (version & 0xF);
    }
}
