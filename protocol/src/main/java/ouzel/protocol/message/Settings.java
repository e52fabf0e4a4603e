package ouzel.protocol.message;

/**
 * What the operator may set on board, as one block that is read back after every change. The controller has its own
 * ceilings above these and refuses a block that passes one.
 *
 * @param waterDoseLimit greatest water dose, mL
 * @param airDoseLimit greatest air dose, mL at ambient conditions
 * @param strokeLimitMillis longest valve opening of a soil stroke, ms
 * @param waterRunLimitMillis longest run of the water pump, ms, unsigned 32 bits
 * @param airRunLimitMillis longest run of the air pump, ms, unsigned 32 bits
 * @param strokesPerCartridge soil strokes allowed before the cartridge must be changed
 * @param waterFlow flow the dose is metered with once the pump is primed, 0.01 mL/s
 * @param airFlow the same for the air pump, 0.01 mL/s
 * @param armLifetimeMillis life of an arming token on the payload's clock, 1 000 to 10 000 ms
 * @param waterFinishesAlone true: a running water draw finishes within its limits when the link is lost; false: stops
 * @param airFinishesAlone the same for the air draw
 */
public record Settings(
        int waterDoseLimit,
        int airDoseLimit,
        int strokeLimitMillis,
        long waterRunLimitMillis,
        long airRunLimitMillis,
        int strokesPerCartridge,
        int waterFlow,
        int airFlow,
        int armLifetimeMillis,
        boolean waterFinishesAlone,
        boolean airFinishesAlone)
        implements Downlink {

    /** Longest life of an arming token that any payload may grant, ms. */
    public static final int LONGEST_ARM_LIFETIME_MILLIS = 10_000;

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public Settings {
        Checks.unsigned16("waterDoseLimit", waterDoseLimit);
        Checks.unsigned16("airDoseLimit", airDoseLimit);
        Checks.unsigned16("strokeLimitMillis", strokeLimitMillis);
        Checks.unsigned32("waterRunLimitMillis", waterRunLimitMillis);
        Checks.unsigned32("airRunLimitMillis", airRunLimitMillis);
        Checks.unsigned8("strokesPerCartridge", strokesPerCartridge);
        Checks.unsigned16("waterFlow", waterFlow);
        Checks.unsigned16("airFlow", airFlow);
        Checks.range("armLifetimeMillis", armLifetimeMillis, 1_000, LONGEST_ARM_LIFETIME_MILLIS);
    }

    /** Greatest dose {@code sampler} may be asked for, in the unit of {@link Arm#dose()}. */
    public int doseLimit(Sampler sampler) {
        return switch (sampler) {
            case WATER -> waterDoseLimit;
            case AIR -> airDoseLimit;
            case SOIL -> strokeLimitMillis;
        };
    }
}
