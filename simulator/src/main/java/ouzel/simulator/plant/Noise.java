package ouzel.simulator.plant;

/**
 * Random numbers from a seed, without allocation: the SplitMix64 generator.
 *
 * <p>Each part of the plant has its own, split off by name, so that one part drawing more often leaves the others'
 * numbers as they were. Source: G. Steele, D. Lea, C. Flood, OOPSLA 2014, "Fast splittable pseudorandom number
 * generators".
 */
final class Noise {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final double UNIT = 0x1.0p-53;
    private static final int SIXTEEN_BITS = 0xFFFF;
    /** Mean of the sum of four uniform 16-bit numbers. */
    private static final double MEAN_OF_FOUR = 2.0 * SIXTEEN_BITS;
    /** Its standard deviation; the variance of one is a twelfth of its range squared. */
    private static final double DEVIATION_OF_FOUR = Math.sqrt(4.0 / 12) * (SIXTEEN_BITS + 1.0);

    private long state;

    Noise(long seed) {
        this.state = mixed(seed);
    }

    /** A generator of its own for the part called {@code name}; this one is left as it was. */
    Noise split(String name) {
        return new Noise(state ^ name.hashCode() * GOLDEN);
    }

    long nextLong() {
        state += GOLDEN;
        return mixed(state);
    }

    /** Uniform in {@code least} (included) to {@code greatest} (not). */
    double uniform(double least, double greatest) {
        return least + (greatest - least) * (nextLong() >>> 11) * UNIT;
    }

    /**
     * Nearly normal, mean 0, standard deviation 1: the sum of four uniform numbers from one draw. Its tails end at 3.46
     * deviations, which suits a sensor better than a tail without end.
     */
    double bell() {
        long bits = nextLong();
        long sum = (bits & SIXTEEN_BITS) + (bits >>> 16 & SIXTEEN_BITS) + (bits >>> 32 & SIXTEEN_BITS) + (bits >>> 48);
        return (sum - MEAN_OF_FOUR) / DEVIATION_OF_FOUR;
    }

    /** The finishing hash of SplitMix64. */
    static long mixed(long value) {
        long once = (value ^ value >>> 30) * 0xBF58476D1CE4E5B9L;
        long twice = (once ^ once >>> 27) * 0x94D049BB133111EBL;
        return twice ^ twice >>> 31;
    }
}
