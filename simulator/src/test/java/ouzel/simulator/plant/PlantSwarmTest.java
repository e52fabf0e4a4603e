package ouzel.simulator.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import ouzel.protocol.message.Sampler;

/** Whatever is switched, broken, mended, reloaded and moved about, in whatever order, the plant stays sensible. */
final class PlantSwarmTest {
    private static final int ACTS = 150;
    private static final int LONGEST_MILLIS = 1_500;

    @Property(tries = 60)
    void readingsStayInRangeAndNothingIsMadeOrLost(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Rig rig = new Rig(seed);
        double chamberAtFirst = rig.plant.truth().gas().chamberGrams();
        for (int act = 0; act < ACTS; act++) {
            meddle(rig, random);
            rig.run(outputs(random), surroundings(random), random.nextInt(10, LONGEST_MILLIS))
                    .forEach(PlantSwarmTest::assertInRange);
            assertSensible(rig.plant.truth());
        }
        assertGasBalance(rig.plant.truth().gas(), chamberAtFirst);
    }

    private static void meddle(Rig rig, SplittableRandom random) {
        Fault fault = Fault.values()[random.nextInt(Fault.values().length)];
        switch (random.nextInt(6)) {
            case 0 -> rig.plant.fault(fault);
            case 1, 2 -> rig.plant.faults().forEach(rig.plant::clear);
            case 3 -> rig.plant.reload(Sampler.values()[random.nextInt(3)]);
            default -> rig.plant.clear(fault);
        }
    }

    private static Outputs outputs(SplittableRandom random) {
        return new Outputs(random.nextBoolean(), random.nextBoolean(), random.nextInt(3) == 0);
    }

    private static Surroundings surroundings(SplittableRandom random) {
        Surroundings.Place[] places = Surroundings.Place.values();
        return new Surroundings(
                places[random.nextInt(places.length)],
                random.nextBoolean(),
                random.nextDouble(70),
                random.nextDouble(500),
                random.nextDouble(-15, 45),
                random.nextDouble(70_000, 104_000),
                random.nextDouble(4));
    }

    private static void assertInRange(Sensed sensed) {
        assertThat(sensed.batteryMillivolts()).isBetween(6_000, 13_000);
        assertThat(sensed.tiltTenths()).isBetween(0, 1_800);
        assertThat(sensed.bagPascals()).isBetween(-2_000, 20_000);
        assertThat(sensed.gasKilopascals()).isBetween(0, 2_000);
        assertThat(sensed.waterPumpMilliamps()).isBetween(0, 5_000);
        assertThat(sensed.airPumpMilliamps()).isBetween(0, 2_000);
        assertThat(sensed.valveMilliamps()).hasSizeBetween(0, 20).allMatch(sample -> sample >= 0 && sample <= 1_000);
    }

    private static void assertSensible(Truth truth) {
        assertThat(truth.water().jarMillilitres()).isBetween(0.0, 430.0);
        assertThat(truth.water().standingMillilitres()).isBetween(-1e-9, 45.0);
        assertThat(truth.air().bagMillilitres()).isBetween(0.0, 2_500.0);
        assertThat(truth.soil().extensionMillimetres()).isBetween(0.0, 90.0);
        // The piston at a fifth over its regulated pressure pushes with 141 N; a sudden change of air adds a little.
        assertThat(truth.soil().peakReactionNewtons()).isBetween(0.0, 150.0);
        assertThat(truth.gas().cartridgeGrams()).isBetween(0.0, 25.5);
        assertThat(truth.gas().cartridgeCelsius()).isBetween(-60.0, 46.0);
        assertThat(truth.power().charge()).isBetween(0.0, 1.0);
    }

    private static void assertGasBalance(Truth.Gas gas, double chamberAtFirst) {
        assertThat(gas.drawnGrams()).isCloseTo(gas.lineGrams() + gas.takenGrams() + gas.leakedGrams(), within(1e-6));
        assertThat(gas.takenGrams()).isCloseTo(gas.chamberGrams() - chamberAtFirst + gas.ventedGrams(), within(1e-6));
    }
}
