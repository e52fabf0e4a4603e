package ouzel.protocol.message;

/** Everything off and disarmed, in every state. Not an emergency stop: it depends on a radio link. */
public record SafeAll() implements Order {}
