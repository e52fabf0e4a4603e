package ouzel.protocol.message;

/** "I am here": an armed sampler goes safe when these stay away for 1.5 s. Gets no outcome. */
public record KeepAlive() implements Order {}
