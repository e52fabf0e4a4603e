package ouzel.app.estimate;

import java.util.Locale;

/**
 * An estimated amount.
 *
 * @param value best estimate, in the sampler's unit: mL of water, mL of air at ambient conditions, g of soil
 * @param standardUncertainty standard uncertainty (JCGM 100:2008), same unit
 */
public record Amount(double value, double standardUncertainty) {
    /** Nothing aboard, known exactly. */
    public static final Amount NONE = new Amount(0, 0);
    /** Coverage factor of the shown +/-. */
    public static final double COVERAGE = 2;

    /** Half width of the shown band, k = 2. */
    public double band() {
        return COVERAGE * standardUncertainty;
    }

    /** The least it may be: what "enough" is decided by. */
    public double lower() {
        return Math.max(0, value - band());
    }

    /** The most it may be: what "too much" is decided by. */
    public double upper() {
        return value + band();
    }

    /** For example "258 ± 9 mL", or "3.6 ± 1.2 g" where whole units would say too little. */
    public String text(String unit) {
        String format = band() < 5 ? "%.1f ± %.1f %s" : "%.0f ± %.0f %s";
        return String.format(Locale.ROOT, format, value, band(), unit);
    }
}
