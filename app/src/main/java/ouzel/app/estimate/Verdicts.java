package ouzel.app.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ouzel.app.estimate.Verdict.Grade;

/** Grades a sample by what was measured; every rule that speaks leaves its reason. */
public final class Verdicts {
    /** Share of the asked dose that a sample must hold for certain. */
    static final double ENOUGH = 0.8;
    /** Share of the asked dose under which there is no sample to speak of. */
    static final double NOTHING = 0.3;
    /** Share of the trace that may be missing before the estimate is not trusted. */
    static final double MISSING = 0.1;

    private Verdicts() {}

    /**
     * What is known of an ended draw.
     *
     * @param pump the pump that drew it
     * @param asked asked dose, mL
     * @param got estimated amount, mL
     * @param estimate the estimator's last state
     * @param missing current samples that never arrived
     * @param metered dose metered on board, mL
     * @param ending how it ended short, in words; empty if the payload proved the dose
     */
    public record DrawFacts(
            PumpModel pump,
            int asked,
            Amount got,
            DrawEstimate estimate,
            int missing,
            int metered,
            Optional<String> ending) {}

    /** Grades a pumped draw. */
    public static Verdict ofDraw(DrawFacts facts) {
        Bench bench = new Bench();
        Amount got = facts.got();
        facts.ending().ifPresent(words -> bench.lower(Grade.SUSPECT, words));
        if (facts.estimate().samples() == 0) {
            bench.lower(Grade.SUSPECT, "no current trace arrived");
        } else if (!facts.estimate().isPrimed()) {
            bench.lower(Grade.VOID, "the pump never drew its sample: current stayed at the dry level");
        }
        if (got.upper() < NOTHING * facts.asked()) {
            bench.lower(Grade.VOID, String.format(Locale.ROOT, "only %s aboard", got.text("mL")));
        } else if (got.lower() < ENOUGH * facts.asked()) {
            bench.lower(Grade.SUSPECT, String.format(Locale.ROOT, "may be short: %s", got.text("mL")));
        }
        if (facts.missing() > MISSING * facts.estimate().samples()) {
            bench.lower(
                    Grade.SUSPECT,
                    String.format(
                            Locale.ROOT,
                            "%.0f %% of the current trace is missing",
                            100.0
                                    * facts.missing()
                                    / Math.max(1, facts.estimate().samples())));
        }
        double apart = Math.abs(got.value() - facts.metered());
        if (apart > got.band() + 0.1 * facts.asked()) {
            bench.lower(
                    Grade.SUSPECT,
                    String.format(Locale.ROOT, "metered on board %d mL, does not agree", facts.metered()));
        }
        return bench.verdict(String.format(
                Locale.ROOT,
                "%s%.2f A while drawing, metered on board %d mL",
                facts.pump().primes()
                        ? String.format(
                                Locale.ROOT,
                                "primed after %.1f s, ",
                                facts.estimate().primedAfterSeconds())
                        : "",
                facts.estimate().meanWetMilliamps() / 1_000,
                facts.metered()));
    }

    /**
     * Grades a soil stroke.
     *
     * @param reading what the valve's waveform says, empty if it did not arrive whole
     * @param ending how it went wrong, in words; empty if the probe was proven away and home again
     * @param wayMillis time from opening to home again, ms
     */
    public static Verdict ofStroke(Optional<ValveReading> reading, Optional<String> ending, int wayMillis) {
        Bench bench = new Bench();
        ending.ifPresent(words -> bench.lower(Grade.VOID, words));
        if (reading.isEmpty()) {
            bench.lower(Grade.SUSPECT, "the valve's waveform did not arrive whole");
        } else if (!reading.get().moved()) {
            bench.lower(Grade.VOID, "no dip in the valve's current: its plunger did not move");
        }
        String valve = reading.filter(ValveReading::moved)
                .map(seen -> String.format(
                        Locale.ROOT, "valve seated at %.1f ms (dip %.0f mA), ", seen.dipMillis(), seen.dipMilliamps()))
                .orElse("");
        return bench.verdict(valve + String.format(Locale.ROOT, "probe away and home again in %d ms", wayMillis));
    }

    /** Collects reasons; the worst grade named stands. */
    private static final class Bench {
        private final List<String> reasons = new ArrayList<>();
        private Grade grade = Grade.ACCEPTED;

        private void lower(Grade to, String reason) {
            grade = to.compareTo(grade) > 0 ? to : grade;
            reasons.add(reason);
        }

        private Verdict verdict(String whenAccepted) {
            return reasons.isEmpty() ? new Verdict(grade, List.of(whenAccepted)) : new Verdict(grade, reasons);
        }
    }
}
