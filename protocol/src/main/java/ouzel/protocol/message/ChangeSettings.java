package ouzel.protocol.message;

/** Replaces the settings on board; answered by an outcome and by {@link Settings} read back from the memory. */
public record ChangeSettings(Settings settings) implements Order {}
