package ouzel.protocol.codec;

import ouzel.protocol.message.Message;

/** What a frame said, or why it said nothing: bad input from the line is a value, never an exception. */
public sealed interface Decoded {
    /** A message. */
    record Known(Message message) implements Decoded {}

    /** A kind this version does not know: skipped and counted. */
    record UnknownKind(int kind) implements Decoded {}

    /** A known kind whose body is too short or holds a value that cannot be, in words. */
    record Malformed(int kind, String why) implements Decoded {}
}
