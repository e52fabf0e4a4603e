package ouzel.simulator.plant;

/**
 * What really happened on board, which no controller or console can see; for scoring and for tests.
 *
 * @param elapsedMillis time since the plant was made, ms
 * @param water the water sampler
 * @param air the air sampler
 * @param soil the soil probe and its valve
 * @param gas cartridge and line
 * @param power the pack
 */
public record Truth(long elapsedMillis, Water water, Air air, Soil soil, Gas gas, Power power) {

    /**
     * The water sampler. Everything drawn is in the jar, in the tubes, spilled, lost, or was in jars replaced since.
     *
     * @param jarMillilitres water in the jar now, mL
     * @param spilledMillilitres water that ran over since the start, mL
     * @param drawnMillilitres water taken in since the start, mL
     * @param standingMillilitres water in the tubes now, mL
     * @param lostMillilitres water leaked or drained from the tubes since the start, mL
     * @param primed water arrives at the jar
     * @param onMillis time the pump was powered since the start, ms
     */
    public record Water(
            double jarMillilitres,
            double spilledMillilitres,
            double drawnMillilitres,
            double standingMillilitres,
            double lostMillilitres,
            boolean primed,
            long onMillis) {}

    /**
     * The air sampler.
     *
     * @param bagMillilitres gas in the bag now at ambient conditions, mL
     * @param bagReferenceMillilitres the same at 20 °C and 101 325 Pa, mL
     * @param bagPascals pressure over ambient in the bag, Pa
     * @param burst the bag tore
     * @param pumpedMillilitres air blown into bags since the start, at the ambient conditions of each moment, mL
     * @param onMillis time the pump was powered since the start, ms
     */
    public record Air(
            double bagMillilitres,
            double bagReferenceMillilitres,
            double bagPascals,
            boolean burst,
            double pumpedMillilitres,
            long onMillis) {}

    /**
     * The soil probe and its valve.
     *
     * @param valveOpenings times the plunger seated since the start
     * @param valveOnMillis time the coil was powered since the start, ms
     * @param strokesStarted times the probe left its home since the start
     * @param strokesCompleted times it reached its end and came home since the start
     * @param extensionMillimetres how far the probe is out now, mm
     * @param home the probe is home
     * @param sampleGrams soil in the tip, g
     * @param peakReactionNewtons greatest push against the ground since the tip was changed, N
     */
    public record Soil(
            int valveOpenings,
            long valveOnMillis,
            int strokesStarted,
            int strokesCompleted,
            double extensionMillimetres,
            boolean home,
            double sampleGrams,
            double peakReactionNewtons) {}

    /**
     * Cartridge and line. What the cartridge gave is in the line, went through the valve, or leaked.
     *
     * @param cartridgeGrams carbon dioxide in the cartridge now, g
     * @param cartridgeCelsius its temperature, degrees Celsius
     * @param linePascals pressure over ambient in the line, Pa
     * @param lineGrams gas in the line now, g
     * @param drawnGrams gas that left cartridges since the start, g
     * @param takenGrams gas that passed the valve since the start, g
     * @param chamberGrams gas behind the piston now, g
     * @param ventedGrams gas vented from behind the piston since the start, g
     * @param leakedGrams gas lost from the line since the start, g
     */
    public record Gas(
            double cartridgeGrams,
            double cartridgeCelsius,
            double linePascals,
            double lineGrams,
            double drawnGrams,
            double takenGrams,
            double chamberGrams,
            double ventedGrams,
            double leakedGrams) {}

    /**
     * The pack.
     *
     * @param milliampHours charge left, mAh
     * @param charge the same as a share of the true capacity, 0 to 1
     * @param volts voltage at the terminals, V
     * @param amperes current drawn, A
     */
    public record Power(double milliampHours, double charge, double volts, double amperes) {}
}
