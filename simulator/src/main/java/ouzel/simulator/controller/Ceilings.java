package ouzel.simulator.controller;

import java.util.Optional;
import ouzel.protocol.message.Settings;

/** Holds a settings block to the ceilings on board. */
final class Ceilings {
    private Ceilings() {}

    /**
     * A figure that passes its ceiling.
     *
     * @param asked what was asked
     * @param allowed the ceiling
     */
    record Passed(int asked, int allowed) {}

    /** The first figure, in the order of the record, that passes its ceiling. */
    static Optional<Passed> passed(Settings asked, Settings ceilings) {
        return over(asked.waterDoseLimit(), ceilings.waterDoseLimit())
                .or(() -> over(asked.airDoseLimit(), ceilings.airDoseLimit()))
                .or(() -> over(asked.strokeLimitMillis(), ceilings.strokeLimitMillis()))
                .or(() -> over(asked.waterRunLimitMillis(), ceilings.waterRunLimitMillis()))
                .or(() -> over(asked.airRunLimitMillis(), ceilings.airRunLimitMillis()))
                .or(() -> over(asked.strokesPerCartridge(), ceilings.strokesPerCartridge()))
                .or(() -> over(asked.waterFlow(), ceilings.waterFlow()))
                .or(() -> over(asked.airFlow(), ceilings.airFlow()))
                .or(() -> over(asked.armLifetimeMillis(), ceilings.armLifetimeMillis()));
    }

    private static Optional<Passed> over(long asked, long allowed) {
        return asked > allowed
                ? Optional.of(new Passed((int) Math.min(asked, Integer.MAX_VALUE), (int) allowed))
                : Optional.empty();
    }
}
