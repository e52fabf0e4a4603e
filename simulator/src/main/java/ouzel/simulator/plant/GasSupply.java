package ouzel.simulator.plant;

import java.util.Set;
import ouzel.simulator.physics.CarbonDioxide;

/**
 * Cartridge, regulator and the line up to the soil valve.
 *
 * <p>While liquid is left the cartridge's pressure depends on its temperature alone; boiling off gas cools it, and it
 * warms up again from the air. The regulator refills the line through its seat, so the line's pressure drops during a
 * stroke and recovers after it. Masses are in g, pressures in Pa over ambient unless said otherwise.
 */
final class GasSupply {
    private static final double ZERO_CELSIUS = 273.15;
    /** The curves end here; a warmer cartridge is treated as if it were at this temperature. */
    private static final double WARMEST_KELVIN = 303.6;

    /** The virial coefficient's table starts here. */
    private static final double COLDEST_KELVIN = 253.15;
    /** Of the liquid at 0 °C and a little above; it grows towards the critical point. */
    private static final double LIQUID_JOULES_PER_GRAM_KELVIN = 2.6;

    private static final double STEEL_JOULES_PER_GRAM_KELVIN = 0.49;
    private static final double WARMING_SECONDS = 150;
    private static final double WARMING = 1 - Math.exp(-Plant.STEP_SECONDS / WARMING_SECONDS);
    /** Flow through the regulator's seat, g/s for each Pa. */
    private static final double SEAT = 1.2e-5;
    /** Flow through a leaking joint, g/s for each Pa. */
    private static final double JOINT_LEAK = 4e-8;
    /** The line's relief valve opens at this share of the regulated pressure, as when the sun warms a closed line. */
    private static final double RELIEF_SHARE = 1.2;

    private final PayloadProfile.Gas figures;
    private final Set<Fault> faults;
    private double cartridgeGrams;
    private double cartridgeKelvin;
    private double saturationPascals;
    private double vapourGramsPerMillilitre;
    private double latentJoulesPerGram;
    private double curvesKelvin;
    private double lineGrams;
    private double linePascals;
    private double drawnGrams;
    private double leakedGrams;
    private double ambientPascals;
    private double kelvin;
    private double secondVirial;

    GasSupply(PayloadProfile.Gas figures, Set<Fault> faults, Surroundings start) {
        this.figures = figures;
        this.faults = faults;
        this.cartridgeGrams = figures.cartridgeGrams();
        ambient(start);
        this.cartridgeKelvin = kelvin;
        updateCurves();
        double absolute = ambientPascals + figures.regulatedKilopascals() * 1_000;
        this.lineGrams = CarbonDioxide.gasDensity(absolute, kelvin) * figures.lineMillilitres() * 1e-3;
        updateLine();
        this.cartridgeGrams -= lineGrams;
        this.drawnGrams = lineGrams;
    }

    private void ambient(Surroundings surroundings) {
        ambientPascals = surroundings.pressurePascals();
        double now = Math.max(COLDEST_KELVIN, Math.min(323, surroundings.temperatureCelsius() + ZERO_CELSIUS));
        if (now != kelvin) {
            kelvin = now;
            secondVirial = CarbonDioxide.secondVirial(kelvin);
        }
    }

    /** Takes the ambient conditions over and warms the cartridge for one step. */
    void warm(Surroundings surroundings) {
        ambient(surroundings);
        cartridgeKelvin += (kelvin - cartridgeKelvin) * WARMING;
        if (Math.abs(cartridgeKelvin - curvesKelvin) > 0.05) {
            updateCurves();
        }
        updateLine();
        relieve();
    }

    private void relieve() {
        double excess = linePascals - RELIEF_SHARE * figures.regulatedKilopascals() * 1_000;
        if (excess > 0) {
            double lost = excess * SEAT * Plant.STEP_SECONDS;
            leakedGrams += lost;
            give(lost);
        }
    }

    /** Refills the line for a whole step in which no gas is drawn. */
    void refillStep() {
        if (linePascals < figures.regulatedKilopascals() * 1_000 - 1 || faults.contains(Fault.GAS_LEAK)) {
            for (int part = 0; part < Probe.SUBSTEPS; part++) {
                refill();
            }
        }
    }

    /** Refills the line for one part of a step. */
    void refill() {
        double leak = faults.contains(Fault.GAS_LEAK) ? linePascals * JOINT_LEAK * Probe.SUBSTEP_SECONDS : 0;
        leakedGrams += leak;
        lineGrams -= leak;
        double wanted = Math.min(figures.regulatedKilopascals() * 1_000, cartridgePascals() - ambientPascals);
        double offered = Math.max(0, wanted - linePascals) * SEAT * Probe.SUBSTEP_SECONDS;
        double inflow = Math.min(offered, cartridgeGrams);
        if (inflow > 0) {
            boilOff(inflow);
            lineGrams += inflow;
        }
        updateLine();
    }

    private void boilOff(double grams) {
        double liquid = liquidGrams();
        cartridgeGrams -= grams;
        drawnGrams += grams;
        double heat = grams * latentJoulesPerGram;
        double capacity = figures.steelGrams() * STEEL_JOULES_PER_GRAM_KELVIN + liquid * LIQUID_JOULES_PER_GRAM_KELVIN;
        cartridgeKelvin -= liquid > 0 ? heat / capacity : 0;
    }

    /** Gives {@code grams} to the probe. */
    void give(double grams) {
        lineGrams -= grams;
        updateLine();
    }

    private void updateLine() {
        double density = lineGrams / figures.lineMillilitres() * 1_000;
        linePascals = CarbonDioxide.gasPascals(density, kelvin, secondVirial) - ambientPascals;
    }

    private void updateCurves() {
        curvesKelvin = cartridgeKelvin;
        saturationPascals = CarbonDioxide.saturationPascals(clampedKelvin());
        latentJoulesPerGram = CarbonDioxide.latentHeat(clampedKelvin()) * 1e-3;
        vapourGramsPerMillilitre = CarbonDioxide.vapourDensity(clampedKelvin()) * 1e-3;
    }

    private double clampedKelvin() {
        return Math.max(CarbonDioxide.TRIPLE_KELVIN + 1, Math.min(WARMEST_KELVIN, cartridgeKelvin));
    }

    private double liquidGrams() {
        return Math.max(0, cartridgeGrams - vapourGramsPerMillilitre * figures.cartridgeMillilitres());
    }

    /** Absolute pressure in the cartridge: saturation while liquid is left, then falling with what is left. */
    double cartridgePascals() {
        double full = vapourGramsPerMillilitre * figures.cartridgeMillilitres();
        return saturationPascals * Math.min(1, cartridgeGrams / full);
    }

    /** Puts a fresh cartridge in, which first fills what the line lacks. */
    void replaceCartridge() {
        cartridgeGrams = figures.cartridgeGrams();
        cartridgeKelvin = kelvin;
        updateCurves();
    }

    double linePascals() {
        return linePascals;
    }

    double lineGrams() {
        return lineGrams;
    }

    double cartridgeGrams() {
        return cartridgeGrams;
    }

    double cartridgeCelsius() {
        return cartridgeKelvin - ZERO_CELSIUS;
    }

    /** Drawn from cartridges since the start. */
    double drawnGrams() {
        return drawnGrams;
    }

    double leakedGrams() {
        return leakedGrams;
    }

    double ambientPascals() {
        return ambientPascals;
    }

    double kelvin() {
        return kelvin;
    }

    double secondVirial() {
        return secondVirial;
    }
}
