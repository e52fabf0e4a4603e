package ouzel.protocol.message;

/** Anything that can travel in a frame: said by the console ({@link Uplink}) or by the payload ({@link Downlink}). */
public sealed interface Message permits Uplink, Downlink {}
