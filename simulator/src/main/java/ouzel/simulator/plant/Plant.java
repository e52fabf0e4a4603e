package ouzel.simulator.plant;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import ouzel.protocol.message.Sampler;
import ouzel.simulator.physics.StandardAtmosphere;

/**
 * Everything on board that is not the controller: pumps, jar, bag, valve, probe, gas, battery and sensors.
 *
 * <p>Time is virtual and moves only with {@link #step}, by 10 ms each. The same profile, seed and calls give the same
 * readings, bit for bit. The true unit differs from the profile by what the seed says: worn pumps, other dead volumes,
 * a pack not quite full, sensors off their zero.
 *
 * <p>Thread: any one at a time.
 */
public final class Plant {
    /** Length of a step, ms. */
    public static final int STEP_MILLIS = 10;

    static final double STEP_SECONDS = STEP_MILLIS * 1e-3;

    private static final Surroundings BENCH =
            new Surroundings(Surroundings.Place.ALOFT, false, 0, 0, 20, StandardAtmosphere.SEA_LEVEL_PASCALS, 0);

    private final PayloadProfile trueUnit;
    private final Set<Fault> faults = EnumSet.noneOf(Fault.class);
    private final Jar jar;
    private final WaterLine waterLine;
    private final Bag bag;
    private final AirLine airLine;
    private final SoilValve valve;
    private final GasSupply supply;
    private final Probe probe;
    private final BatteryPack pack;
    private final BodyMotion motion;
    private final WetSensors contacts;
    private final Sensors sensors;
    private final Sensors.Parts parts;
    private long steps;

    /** A payload of the kind {@code profile} on the bench, fresh jar, bag, tip and cartridge fitted. */
    public Plant(PayloadProfile profile, long seed) {
        Noise noise = new Noise(seed);
        trueUnit = profile.asBuilt(noise.split("unit"));
        jar = new Jar(trueUnit.water(), faults);
        waterLine = new WaterLine(trueUnit, jar, faults, noise.split("water"));
        bag = new Bag(trueUnit.air(), faults);
        airLine = new AirLine(trueUnit, bag, faults, noise.split("air"));
        valve = new SoilValve(trueUnit.valve(), faults, noise.split("valve"));
        supply = new GasSupply(trueUnit.gas(), faults, BENCH);
        probe = new Probe(trueUnit.probe(), supply, faults, BENCH);
        pack = new BatteryPack(trueUnit.pack(), faults);
        motion = new BodyMotion(noise.split("motion"));
        contacts = new WetSensors(faults);
        sensors = new Sensors(noise.split("sensors"), faults);
        parts = new Sensors.Parts(jar, waterLine, airLine, supply, probe, pack, motion, contacts);
    }

    /** Moves everything on by 10 ms under {@code outputs}, and reads the sensors at its end. */
    public Sensed step(Outputs outputs, Surroundings surroundings) {
        steps++;
        double volts = faults.contains(Fault.PLUG_OUT) ? 0 : pack.volts();
        boolean stroking = !probe.isHome();
        motion.step(surroundings, outputs.waterPump(), outputs.airPump(), stroking);
        double tilt = Math.abs(surroundings.tiltDegrees() + motion.swayDegrees());
        contacts.step(surroundings.place(), tilt, motion.heaveMillimetres());
        waterLine.step(outputs.waterPump() ? volts : 0, contacts.isIntakeUnder());
        jar.step(motion.swayDegrees());
        airLine.step(outputs.airPump() ? volts : 0, contacts.isInletUnder(), surroundings);
        List<Integer> coil = List.of();
        if (outputs.soilValve()) {
            coil = valve.energise(volts, surroundings.temperatureCelsius());
        } else {
            valve.rest();
        }
        probe.step(valve.isOpen(), surroundings);
        double amperes =
                trueUnit.pack().idleAmperes() + waterLine.meanAmperes() + airLine.meanAmperes() + valve.amperes();
        pack.step(amperes, surroundings.temperatureCelsius());
        return sensors.read(parts, tilt, surroundings, coil);
    }

    /** Fits what a person fits between draws: a fresh jar and drained tubes, a flat bag, or a tip and a cartridge. */
    public void reload(Sampler sampler) {
        switch (sampler) {
            case WATER -> {
                jar.replace();
                waterLine.drain();
            }
            case AIR -> {
                bag.replace();
                airLine.relieve();
            }
            case SOIL -> {
                probe.replaceTip();
                supply.replaceCartridge();
            }
        }
    }

    /** Breaks something; it stays broken until {@link #clear}. */
    public void fault(Fault fault) {
        faults.add(fault);
    }

    /** Mends one thing. */
    public void clear(Fault fault) {
        faults.remove(fault);
    }

    /** What is broken now. */
    public Set<Fault> faults() {
        return Set.copyOf(faults);
    }

    /** What really is, for scoring and tests. */
    public Truth truth() {
        return new Truth(
                steps * STEP_MILLIS,
                new Truth.Water(
                        jar.millilitres(),
                        jar.spilledMillilitres(),
                        waterLine.drawnMillilitres(),
                        waterLine.standingMillilitres(),
                        waterLine.leakedMillilitres(),
                        waterLine.isPrimed(),
                        waterLine.onMillis()),
                new Truth.Air(
                        bag.millilitres(),
                        bag.referenceMillilitres(),
                        bag.pascals(),
                        bag.isBurst(),
                        airLine.pumpedMillilitres(),
                        airLine.onMillis()),
                new Truth.Soil(
                        valve.openings(),
                        valve.energisedMillis(),
                        probe.strokesStarted(),
                        probe.strokesCompleted(),
                        probe.extension(),
                        probe.isHome(),
                        probe.sampleGrams(),
                        probe.peakReaction()),
                gasTruth(),
                new Truth.Power(pack.milliampHours(), pack.charge(), pack.volts(), pack.amperes()));
    }

    private Truth.Gas gasTruth() {
        return new Truth.Gas(
                supply.cartridgeGrams(),
                supply.cartridgeCelsius(),
                supply.linePascals(),
                supply.lineGrams(),
                supply.drawnGrams(),
                probe.takenGrams(),
                probe.chamberGrams(),
                probe.ventedGrams(),
                supply.leakedGrams());
    }
}
