package ouzel.protocol.message;

/** Proves that the console holds the pairing key; from here the new session is in force and the former one is void. */
public record Confirm() implements Order {}
