package ouzel.protocol.message;

/** Asks for {@link Settings} as they stand on board. */
public record ReadSettings() implements Order {}
