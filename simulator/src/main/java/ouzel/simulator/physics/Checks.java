package ouzel.simulator.physics;

/** Refusals with name, value and what was expected, for arguments outside the range of a law. */
final class Checks {
    private Checks() {}

    /** Returns {@code value} if it lies in {@code least} to {@code greatest}, both included; NaN never does. */
    static double within(String name, double value, double least, double greatest) {
        if (!(value >= least && value <= greatest)) {
            throw new IllegalArgumentException(name + " : " + value + " (expected: " + least + " to " + greatest + ")");
        }
        return value;
    }

    /** Returns {@code value} if it is finite and above zero. */
    static double positive(String name, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " : " + value + " (expected: > 0)");
        }
        return value;
    }

    /** Returns {@code value} if it is finite and not below zero. */
    static double notNegative(String name, double value) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " : " + value + " (expected: >= 0)");
        }
        return value;
    }
}
