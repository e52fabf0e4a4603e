package ouzel.app.estimate;

/**
 * What the console believes of one pump before it was weighed on the bench.
 *
 * @param flow flow once primed at the nominal voltage, mL/s
 * @param nominalMillivolts the voltage that flow belongs to, mV
 * @param dryMilliamps current at the nominal voltage with nothing but air in the pump, mA
 * @param wetMilliamps current at the nominal voltage once primed, mA
 * @param primes true if the pump draws air before it draws its sample, so that the fill counts from priming on
 * @param lineMillilitres what stays in the tube behind the pump and never reaches the container, mL
 * @param relativeUncertainty standard uncertainty of the flow as a share of it
 */
public record PumpModel(
        double flow,
        int nominalMillivolts,
        int dryMilliamps,
        int wetMilliamps,
        boolean primes,
        double lineMillilitres,
        double relativeUncertainty) {

    /** Current that parts dry from wet at {@code millivolts}, mA: the middle, since both follow the voltage. */
    double threshold(int millivolts) {
        return (dryMilliamps + wetMilliamps) / 2.0 * millivolts / nominalMillivolts;
    }

    /** Flow at {@code millivolts}, mL/s: a positive-displacement pump's speed follows its voltage. */
    double flowAt(int millivolts) {
        return flow * millivolts / nominalMillivolts;
    }
}
