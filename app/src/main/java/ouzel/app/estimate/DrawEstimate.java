package ouzel.app.estimate;

/** Placeholder to be replaced in the next commit. */
public record DrawEstimate() {}
