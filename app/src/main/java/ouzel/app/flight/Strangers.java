package ouzel.app.flight;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import ouzel.protocol.session.Heard;

/** Puts what does not belong on the line into words, and says the same thing only once in a while. */
final class Strangers {
    private static final long AGAIN_AFTER_NANOS = 30_000_000_000L;

    private final Map<String, Long> said = new HashMap<>();

    /** The sentence for {@code heard}; empty if it was said lately. */
    Optional<String> sentence(Heard heard, long nowNanos) {
        String words = words(heard);
        Long last = said.get(words);
        if (last != null && nowNanos - last < AGAIN_AFTER_NANOS) {
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
