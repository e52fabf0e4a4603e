package ouzel.app.desk;

import java.util.Locale;
import java.util.OptionalDouble;
import ouzel.app.estimate.Amount;
import ouzel.app.estimate.Verdict;
import ouzel.protocol.message.Sampler;

/**
 * What one draw or stroke brought aboard.
 *
 * @param number counts samples of this sortie, from 1
 * @param sampler which sampler
 * @param site where
 * @param orderId the trigger
 * @param asked asked amount in the unit of {@link #unit()}; for soil the valve opening, ms
 * @param got estimated amount
 * @param truth what the simulated plant really holds; empty in a real flight
 * @param verdict what it is worth, and why
 * @param started start of the draw
 * @param ended end of the draw: the time of collection
 */
public record Sample(
        int number,
        Sampler sampler,
        String site,
        long orderId,
        int asked,
        Amount got,
        OptionalDouble truth,
        Verdict verdict,
        Moment started,
        Moment ended) {

    /** Unit of the amounts. */
    public String unit() {
        return switch (sampler) {
            case WATER, AIR -> "mL";
            case SOIL -> "g";
        };
    }

    /** Unit of what was asked. */
    public String askedUnit() {
        return sampler == Sampler.SOIL ? "ms" : "mL";
    }

    Sample withTruth(double amount) {
        return new Sample(
                number, sampler, site, orderId, asked, got, OptionalDouble.of(amount), verdict, started, ended);
    }

    /** One line for a terminal: asked, got with uncertainty, true value if known, verdict and reasons. */
    public String line() {
        String known = truth.isPresent() ? String.format(Locale.ROOT, "%.1f %s", truth.getAsDouble(), unit()) : "-";
        return String.format(
                Locale.ROOT,
                "sample %d %-5s asked %d %s, got %s, true %s, %s: %s",
                number,
                sampler.name().toLowerCase(Locale.ROOT),
                asked,
                askedUnit(),
                got.text(unit()),
                known,
                verdict.grade().word(),
                String.join("; ", verdict.reasons()));
    }
}
