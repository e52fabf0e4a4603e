package ouzel.protocol.message;

/** Records that a person has fitted a fresh container, bag or probe tip: a used sampler may be armed again. */
public record Reload(Sampler sampler) implements Order {}
