package ouzel.simulator.plant;

import java.util.Map;

/**
 * The figures of one kind of payload: what its maker would write into its data sheet.
 *
 * <p>A plant is built from a profile and a seed; the true unit differs a little from the profile (see
 * {@link #asBuilt}), as units do. The data file beside this package names every key with its unit.
 *
 * @param waterPump the water pump
 * @param airPump the air pump
 * @param water tubes and jar
 * @param air the bag
 * @param valve the soil valve
 * @param probe the soil probe
 * @param gas cartridge, regulator and line
 * @param pack the battery
 */
public record PayloadProfile(
        Pump waterPump,
        Pump airPump,
        WaterSampler water,
        AirSampler air,
        Valve valve,
        Probe probe,
        Gas gas,
        Pack pack) {

    /**
     * A pump with its motor.
     *
     * @param nominalVolts voltage at which the other figures hold, V
     * @param freeMillilitresPerSecond flow without back pressure, mL/s
     * @param stallPascals back pressure that ends the flow, Pa
     * @param ohms resistance of motor and leads; inrush is volts / ohms
     * @param dryAmperes running current with air in a water pump, or without load, A
     * @param loadedAmperes running current with water in a water pump, or as an air pump runs, A
     * @param loadedRpm shaft speed at the loaded current
     * @param spinUpSeconds time constant of the run-up, s
     * @param dryRipple half height of the current's pulses, running dry, over the mean
     * @param loadedRipple the same, loaded
     */
    public record Pump(
            double nominalVolts,
            double freeMillilitresPerSecond,
            double stallPascals,
            double ohms,
            double dryAmperes,
            double loadedAmperes,
            double loadedRpm,
            double spinUpSeconds,
            double dryRipple,
            double loadedRipple) {}

    /**
     * Tubes and jar of the water sampler.
     *
     * @param suctionMillilitres volume from intake to pump, mL
     * @param deliveryMillilitres volume from pump to jar, mL
     * @param liftPascals back pressure of the lift, Pa
     * @param jarMillilitres volume of the jar to its vent, mL
     * @param levelSwitchMillilitres content at which the level switch closes, mL
     * @param doseMillilitres dose usually drawn, mL
     */
    public record WaterSampler(
            double suctionMillilitres,
            double deliveryMillilitres,
            double liftPascals,
            double jarMillilitres,
            double levelSwitchMillilitres,
            double doseMillilitres) {}

    /**
     * The film gas bag.
     *
     * @param bagMillilitres volume at which the film comes taut, mL
     * @param slackPascals pressure of the film's own weight just before, Pa
     * @param stiffnessPascalsPerMillilitre pressure gained by each mL beyond, Pa/mL
     * @param burstPascals pressure that tears the seam, Pa
     * @param doseMillilitres dose usually drawn, mL
     */
    public record AirSampler(
            double bagMillilitres,
            double slackPascals,
            double stiffnessPascalsPerMillilitre,
            double burstPascals,
            double doseMillilitres) {}

    /**
     * The soil valve's solenoid.
     *
     * @param ohms coil resistance at 20 °C
     * @param restHenries inductance with the plunger at rest, H
     * @param seatedHenries inductance with the plunger seated, H
     * @param pullInAmperes current at which the plunger starts to move, A
     * @param travelMillis time the plunger takes, about, ms
     */
    public record Valve(
            double ohms, double restHenries, double seatedHenries, double pullInAmperes, double travelMillis) {}

    /**
     * The soil probe.
     *
     * @param boreMillimetres bore of the piston, mm
     * @param strokeMillimetres its stroke, mm
     * @param deadMillilitres volume behind the piston at home, mL
     * @param springPreloadNewtons return spring at home, N
     * @param springNewtonsPerMillimetre its rate, N/mm
     * @param tipMillimetres diameter of the tip's cone, mm
     * @param coreGramsPerMillimetre soil taken for each mm of depth, g/mm
     * @param dampingNewtonSecondsPerMetre damping of the piston, N s/m
     */
    public record Probe(
            double boreMillimetres,
            double strokeMillimetres,
            double deadMillilitres,
            double springPreloadNewtons,
            double springNewtonsPerMillimetre,
            double tipMillimetres,
            double coreGramsPerMillimetre,
            double dampingNewtonSecondsPerMetre) {}

    /**
     * Cartridge, regulator and line.
     *
     * @param cartridgeGrams carbon dioxide in a fresh cartridge, g
     * @param cartridgeMillilitres inner volume of the cartridge, mL
     * @param steelGrams mass of the cartridge's steel, g
     * @param regulatedKilopascals pressure over ambient behind the regulator, kPa
     * @param lineMillilitres volume of the line up to the valve, mL
     */
    public record Gas(
            double cartridgeGrams,
            double cartridgeMillilitres,
            double steelGrams,
            double regulatedKilopascals,
            double lineMillilitres) {}

    /**
     * The battery and what is always on.
     *
     * @param cells cells in series
     * @param milliampHours capacity, mAh
     * @param ohms resistance of the pack at 20 °C
     * @param startCharge charge at the start, 0 to 1
     * @param idleAmperes current of controller, radio and sensors, A
     */
    public record Pack(int cells, double milliampHours, double ohms, double startCharge, double idleAmperes) {}

    /**
     * Reads a profile from its keys.
     *
     * @throws IllegalArgumentException if a key is missing or unknown, or a value is no number or out of its range; the
     *     text names the key, the value and what was expected
     */
    public static PayloadProfile from(Map<String, String> figures) {
        return new ProfileReader(figures).profile();
    }

    /** The true figures of one unit of this kind, which differ from the profile as far as such parts do. */
    PayloadProfile asBuilt(Noise noise) {
        return new PayloadProfile(
                built(waterPump, noise),
                built(airPump, noise),
                new WaterSampler(
                        water.suctionMillilitres * noise.uniform(0.88, 1.12),
                        water.deliveryMillilitres * noise.uniform(0.88, 1.12),
                        water.liftPascals * noise.uniform(0.9, 1.1),
                        water.jarMillilitres * noise.uniform(0.99, 1.01),
                        water.levelSwitchMillilitres * noise.uniform(0.985, 1.015),
                        water.doseMillilitres),
                new AirSampler(
                        air.bagMillilitres * noise.uniform(0.97, 1.03),
                        air.slackPascals * noise.uniform(0.7, 1.3),
                        air.stiffnessPascalsPerMillilitre * noise.uniform(0.8, 1.2),
                        air.burstPascals * noise.uniform(0.85, 1.15),
                        air.doseMillilitres),
                built(valve, noise),
                built(probe, noise),
                new Gas(
                        gas.cartridgeGrams * noise.uniform(0.985, 1.015),
                        gas.cartridgeMillilitres * noise.uniform(0.98, 1.02),
                        gas.steelGrams * noise.uniform(0.97, 1.03),
                        gas.regulatedKilopascals * noise.uniform(0.97, 1.03),
                        gas.lineMillilitres),
                new Pack(
                        pack.cells,
                        pack.milliampHours * noise.uniform(0.92, 1.0),
                        pack.ohms * noise.uniform(0.9, 1.3),
                        Math.min(1, pack.startCharge * noise.uniform(0.94, 1.0)),
                        pack.idleAmperes * noise.uniform(0.9, 1.1)));
    }

    private static Pump built(Pump pump, Noise noise) {
        return new Pump(
                pump.nominalVolts,
                pump.freeMillilitresPerSecond * noise.uniform(0.95, 1.05),
                pump.stallPascals * noise.uniform(0.9, 1.1),
                pump.ohms * noise.uniform(0.95, 1.05),
                pump.dryAmperes * noise.uniform(0.93, 1.07),
                pump.loadedAmperes * noise.uniform(0.95, 1.05),
                pump.loadedRpm * noise.uniform(0.97, 1.03),
                pump.spinUpSeconds * noise.uniform(0.9, 1.1),
                pump.dryRipple * noise.uniform(0.8, 1.2),
                pump.loadedRipple * noise.uniform(0.8, 1.2));
    }

    private static Valve built(Valve valve, Noise noise) {
        double inductance = noise.uniform(0.95, 1.05);
        return new Valve(
                valve.ohms * noise.uniform(0.97, 1.03),
                valve.restHenries * inductance,
                valve.seatedHenries * inductance,
                valve.pullInAmperes * noise.uniform(0.94, 1.06),
                valve.travelMillis * noise.uniform(0.9, 1.1));
    }

    private static Probe built(Probe probe, Noise noise) {
        return new Probe(
                probe.boreMillimetres,
                probe.strokeMillimetres,
                probe.deadMillilitres * noise.uniform(0.95, 1.05),
                probe.springPreloadNewtons * noise.uniform(0.95, 1.05),
                probe.springNewtonsPerMillimetre * noise.uniform(0.97, 1.03),
                probe.tipMillimetres,
                probe.coreGramsPerMillimetre * noise.uniform(0.9, 1.1),
                probe.dampingNewtonSecondsPerMetre * noise.uniform(0.85, 1.15));
    }
}
