package ouzel.protocol.message;

/** Ends what one sampler is doing and disarms it. */
public record Stop(Sampler sampler) implements Order {}
