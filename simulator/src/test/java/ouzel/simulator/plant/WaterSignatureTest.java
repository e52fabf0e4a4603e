package ouzel.simulator.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ouzel.protocol.message.Readings.Switch;

/** The water pump's signatures: common practice for brushed diaphragm pumps, no source, unless a test names one. */
final class WaterSignatureTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void dryCurrentIsHalfToSevenTenthsOfWet(long seed) {
        List<Sensed> dry = settled(new Rig(seed), Rig.ALOFT);
        List<Sensed> wet = settled(new Rig(seed).primed(), Rig.AFLOAT);

        double ratio = mean(dry) / mean(wet);

        assertThat(ratio).isBetween(0.48, 0.72);
        assertThat(Rig.ripple(dry, Sensed::waterPumpMilliamps))
                .isLessThan(0.6 * Rig.ripple(wet, Sensed::waterPumpMilliamps));
    }

    @Test
    void inrushIsVoltsOverOhmsAndDiesAwayInATenthOfASecond() {
        List<Sensed> start = new Rig(1).run(Rig.WATER, Rig.AFLOAT, 500);

        assertThat(start.get(0).waterPumpMilliamps()).isBetween(3_600, 4_600);
        assertThat(start.get(20).waterPumpMilliamps()).isLessThan(1_100);
    }

    @Test
    void nothingReachesTheJarBeforeBothTubesAreFull() {
        Rig rig = new Rig(1);
        rig.run(Rig.WATER, Rig.AFLOAT, 3_000);

        assertThat(rig.plant.truth().water().jarMillilitres()).isZero();
        assertThat(rig.plant.truth().water().drawnMillilitres()).isGreaterThan(15);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void primedFlowIsNearTheProfilesAndNotEqualToIt(long seed) {
        Rig rig = new Rig(seed).primed();
        double before = rig.plant.truth().water().jarMillilitres();
        rig.run(Rig.WATER, Rig.AFLOAT, 10_000);

        double perSecond = (rig.plant.truth().water().jarMillilitres() - before) / 10;

        assertThat(perSecond).isBetween(7.5, 9.1);
    }

    @Test
    void aBlockedInletRaisesTheCurrentByTenToThirtyPercentAndStopsTheFlow() {
        Rig rig = new Rig(3).primed();
        double healthy = mean(settled(rig, Rig.AFLOAT));
        rig.plant.fault(Fault.WATER_INLET_BLOCKED);
        rig.run(Rig.WATER, Rig.AFLOAT, 500);
        double before = rig.plant.truth().water().drawnMillilitres();

        double blocked = mean(settled(rig, Rig.AFLOAT));

        assertThat(blocked / healthy).isBetween(1.10, 1.30);
        assertThat(rig.plant.truth().water().drawnMillilitres() - before).isLessThan(1.5);
    }

    @Test
    void aKinkedOutletRaisesTheCurrentByMoreThanSixtyPercent() {
        Rig rig = new Rig(3).primed();
        double healthy = mean(settled(rig, Rig.AFLOAT));
        rig.plant.fault(Fault.WATER_OUTLET_BLOCKED);
        rig.run(Rig.WATER, Rig.AFLOAT, 1_500);

        assertThat(mean(settled(rig, Rig.AFLOAT)) / healthy).isGreaterThan(1.6);

        rig.plant.clear(Fault.WATER_OUTLET_BLOCKED);
        rig.run(Rig.WATER, Rig.AFLOAT, 2_000);
        assertThat(mean(settled(rig, Rig.AFLOAT)) / healthy).isBetween(0.97, 1.03);
    }

    @Test
    void anAirlockFallsToTheDryCurrentAndBreathesSlowly() {
        Rig rig = new Rig(3).primed();
        double healthy = mean(settled(rig, Rig.AFLOAT));
        double drawn = rig.plant.truth().water().drawnMillilitres();
        rig.plant.fault(Fault.WATER_AIRLOCK);
        List<Sensed> locked = settled(rig, Rig.AFLOAT);

        assertThat(mean(locked) / healthy).isBetween(0.5, 0.75);
        assertThat(Rig.mean(locked.subList(0, 65), Sensed::waterPumpMilliamps)
                        - Rig.mean(locked.subList(65, 130), Sensed::waterPumpMilliamps))
                .isNotCloseTo(0, within(15.0));
        assertThat(rig.plant.truth().water().drawnMillilitres() - drawn).isLessThan(3);
    }

    @Test
    void anOpenWireReadsNothingAndPumpsNothing() {
        Rig rig = new Rig(2, Fault.WATER_PUMP_OPEN);

        List<Sensed> sensed = rig.run(Rig.WATER, Rig.AFLOAT, 3_000);

        assertThat(sensed)
                .allSatisfy(step -> assertThat(step.waterPumpMilliamps()).isLessThan(20));
        assertThat(rig.plant.truth().water().drawnMillilitres()).isZero();
        assertThat(rig.plant.truth().water().onMillis()).isEqualTo(3_000);
    }

    @Test
    void aJammedShaftStaysAtInrushAndPullsTheBatteryDown() {
        Rig rig = new Rig(2, Fault.WATER_PUMP_JAMMED);
        double resting = Rig.mean(rig.run(Outputs.OFF, Rig.AFLOAT, 500), Sensed::batteryMillivolts);

        List<Sensed> jammed = rig.run(Rig.WATER, Rig.AFLOAT, 2_000);

        assertThat(mean(jammed)).isGreaterThan(3_500);
        assertThat(Rig.ripple(jammed, Sensed::waterPumpMilliamps)).isLessThan(0.03);
        assertThat(resting - Rig.mean(jammed, Sensed::batteryMillivolts)).isGreaterThan(250);
    }

    @Test
    void anIntakeOutOfTheWaterSendsAirAfterTheWaterInTheTube() {
        Rig rig = new Rig(4).primed();
        rig.run(Rig.WATER, Rig.ALOFT, 6_000);
        double jar = rig.plant.truth().water().jarMillilitres();

        List<Sensed> dry = settled(rig, Rig.ALOFT);

        assertThat(rig.plant.truth().water().primed()).isFalse();
        assertThat(rig.plant.truth().water().jarMillilitres()).isEqualTo(jar);
        assertThat(mean(dry)).isLessThan(800);
    }

    @Test
    void theJarKeepsItsVolumeAndTheRestSpills() {
        Rig rig = new Rig(5, Fault.LEVEL_SWITCH_STUCK_OPEN);
        List<Sensed> sensed = rig.run(Rig.WATER, Rig.AFLOAT, 70_000);
        Truth.Water water = rig.plant.truth().water();

        assertThat(water.jarMillilitres()).isBetween(410.0, 430.0);
        assertThat(water.spilledMillilitres()).isGreaterThan(50);
        assertThat(closed(sensed, Switch.JAR_FULL)).isZero();
    }

    @Test
    void theLevelSwitchClosesNearTheBrim() {
        Rig rig = new Rig(5);
        while ((rig.plant.step(Rig.WATER, Rig.AFLOAT).switches() & Switch.JAR_FULL.bit()) == 0) {
            assertThat(rig.plant.truth().elapsedMillis()).isLessThan(80_000);
        }

        assertThat(rig.plant.truth().water().jarMillilitres()).isBetween(385.0, 410.0);
    }

    @Test
    void waterIsNeitherMadeNorLost() {
        Rig rig = new Rig(6, Fault.WATER_LINE_LEAK).primed();
        rig.run(Rig.WATER, Rig.AFLOAT, 20_000);
        rig.run(Rig.WATER, Rig.ALOFT, 3_000);
        rig.plant.clear(Fault.WATER_LINE_LEAK);
        rig.run(Rig.WATER, Rig.AFLOAT, 40_000);
        Truth.Water water = rig.plant.truth().water();

        double found = water.jarMillilitres()
                + water.spilledMillilitres()
                + water.standingMillilitres()
                + water.lostMillilitres();

        assertThat(found).isCloseTo(water.drawnMillilitres(), within(1e-6));
        assertThat(water.lostMillilitres()).isGreaterThan(30);
    }

    private static List<Sensed> settled(Rig rig, Surroundings surroundings) {
        rig.run(Rig.WATER, surroundings, 500);
        return rig.run(Rig.WATER, surroundings, 2_000);
    }

    private static double mean(List<Sensed> sensed) {
        return Rig.mean(sensed, Sensed::waterPumpMilliamps);
    }

    private static long closed(List<Sensed> sensed, Switch which) {
        return sensed.stream()
                .filter(step -> (step.switches() & which.bit()) != 0)
                .count();
    }
}
