package ouzel.simulator.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The air sampler's signatures: common practice for small diaphragm pumps, no source, unless a test names one. */
final class AirSignatureTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void aSlackBagFillsAtTheProfilesFlowWithHardlyAnyPressure(long seed) {
        Rig rig = new Rig(seed);
        List<Sensed> sensed = rig.run(Rig.AIR, Rig.ALOFT, 28_000);

        assertThat(rig.plant.truth().air().bagMillilitres()).isBetween(540.0, 660.0);
        assertThat(Rig.mean(sensed, Sensed::bagPascals)).isLessThan(150);
        assertThat(Rig.mean(sensed.subList(100, 2_800), Sensed::airPumpMilliamps))
                .isBetween(390.0, 520.0);
    }

    @Test
    void aTautBagShowsAKneeInPressureAndMoreCurrent() {
        Rig rig = new Rig(1);
        double slack = Rig.mean(rig.run(Rig.AIR, Rig.ALOFT, 30_000).subList(100, 3_000), Sensed::airPumpMilliamps);
        rig.run(Rig.AIR, Rig.ALOFT, 22_000);
        List<Sensed> taut = rig.run(Rig.AIR, Rig.ALOFT, 1_000);

        assertThat(Rig.mean(taut, Sensed::bagPascals)).isGreaterThan(1_000);
        assertThat(Rig.mean(taut, Sensed::airPumpMilliamps)).isGreaterThan(slack * 1.03);
    }

    @Test
    void airIsNeitherMadeNorLost() {
        Rig rig = new Rig(2);
        rig.run(Rig.AIR, Rig.ALOFT, 25_000);
        Truth.Air air = rig.plant.truth().air();

        assertThat(air.bagMillilitres()).isCloseTo(air.pumpedMillilitres(), withinPercentage(0.1));
        assertThat(air.bagReferenceMillilitres() * 291.15 / 293.15).isCloseTo(air.bagMillilitres(), within(0.05));
    }

    /** Ideal gas law: the same gas at 95 461 instead of 101 325 Pa and unchanged temperature takes 6.14 % more room. */
    @Test
    void theBagGrowsAsItClimbs() {
        Rig rig = new Rig(2);
        rig.run(Rig.AIR, Rig.ALOFT, 25_000);
        rig.run(Outputs.OFF, Rig.ALOFT, 1_000);
        double low = rig.plant.truth().air().bagMillilitres();
        rig.run(Outputs.OFF, new Surroundings(Surroundings.Place.ALOFT, true, 0, 0, 18, 95_461, 0), 100);

        assertThat(rig.plant.truth().air().bagMillilitres() / low).isCloseTo(101_325.0 / 95_461, within(1e-4));
    }

    @Test
    void aHoleShowsAsDecayInTheHoldTestAndASoundBagHolds() {
        assertThat(heldShare(new Rig(3))).isGreaterThan(0.97);
        assertThat(heldShare(new Rig(3, Fault.BAG_LEAK))).isLessThan(0.5);
    }

    @Test
    void aClosedBagValveRaisesThePressureAtOnceAndFillsNothing() {
        Rig rig = new Rig(4, Fault.BAG_VALVE_CLOSED);
        List<Sensed> sensed = rig.run(Rig.AIR, Rig.ALOFT, 500);

        assertThat(sensed.get(sensed.size() - 1).bagPascals()).isGreaterThan(5_000);
        assertThat(rig.plant.truth().air().bagMillilitres()).isZero();
    }

    @Test
    void aTubeThatFellOffLowersTheCurrentAndFillsNothing() {
        double healthy =
                Rig.mean(new Rig(5).run(Rig.AIR, Rig.ALOFT, 5_000).subList(100, 500), Sensed::airPumpMilliamps);
        Rig rig = new Rig(5, Fault.BAG_TUBE_OFF);
        List<Sensed> off = rig.run(Rig.AIR, Rig.ALOFT, 5_000).subList(100, 500);

        assertThat(Rig.mean(off, Sensed::airPumpMilliamps)).isLessThan(0.9 * healthy);
        assertThat(Rig.mean(off, Sensed::bagPascals)).isBetween(-25.0, 25.0);
        assertThat(rig.plant.truth().air().bagMillilitres()).isZero();
    }

    @Test
    void anOpenWireReadsNothing() {
        List<Sensed> sensed = new Rig(6, Fault.AIR_PUMP_OPEN).run(Rig.AIR, Rig.ALOFT, 1_000);

        assertThat(sensed)
                .allSatisfy(step -> assertThat(step.airPumpMilliamps()).isLessThan(20));
    }

    @Test
    void anOverfilledBagTears() {
        Rig rig = new Rig(7);
        rig.run(Rig.AIR, Rig.ALOFT, 90_000);

        assertThat(rig.plant.truth().air().burst()).isTrue();
        assertThat(rig.plant.truth().air().bagMillilitres()).isLessThan(1_000);
    }

    private static double heldShare(Rig rig) {
        rig.run(Rig.AIR, Rig.ALOFT, 47_000);
        double before = Rig.mean(rig.run(Outputs.OFF, Rig.ALOFT, 1_000), Sensed::bagPascals);
        rig.run(Outputs.OFF, Rig.ALOFT, 8_000);
        return Rig.mean(rig.run(Outputs.OFF, Rig.ALOFT, 1_000), Sensed::bagPascals) / before;
    }
}
