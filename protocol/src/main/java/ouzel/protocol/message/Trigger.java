package ouzel.protocol.message;

/**
 * Starts the armed sampler, once.
 *
 * @param sampler the sampler that was armed
 * @param token the arming token from the outcome of the {@link Arm} order, any 64 bits
 */
public record Trigger(Sampler sampler, long token) implements Order {}
