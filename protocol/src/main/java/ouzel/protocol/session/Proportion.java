package ouzel.protocol.session;

/**
 * A share that was counted, and how well that many cases can tell it.
 *
 * <p><b>Source:</b> E. B. Wilson, J. Amer. Statist. Assoc. 22 (1927) 209; method 3 in R. G. Newcombe, Statist. Med. 17
 * (1998) 857. Unlike the textbook interval it stays between 0 and 1 and holds for few cases and extreme shares, which
 * is where a good link lives.
 *
 * @param share successes / cases, 0 to 1; NaN without a case
 * @param low lower end of the 95 % interval, 0 to 1; NaN without a case
 * @param high upper end of the 95 % interval, 0 to 1; NaN without a case
 */
record Proportion(double share, double low, double high) {
    /** The standard normal distribution's quantile at 0.975: 95 % lie within it either way. */
    private static final double Z = 1.959963984540054;

    /**
     * The share of {@code successes} in {@code cases}.
     *
     * @param successes 0 to {@code cases}
     */
    static Proportion of(long successes, long cases) {
        if (cases == 0) {
            return new Proportion(Double.NaN, Double.NaN, Double.NaN);
        }
        double share = (double) successes / cases;
        double zSquared = Z * Z / cases;
        double centre = share + zSquared / 2;
        double half = Z * Math.sqrt(share * (1 - share) / cases + zSquared / (4.0 * cases));
        double low = (centre - half) / (1 + zSquared);
        double high = (centre + half) / (1 + zSquared);
        // Rounding must not push an end past the share that it encloses.
        return new Proportion(share, successes == 0 ? 0 : low, successes == cases ? 1 : high);
    }
}
