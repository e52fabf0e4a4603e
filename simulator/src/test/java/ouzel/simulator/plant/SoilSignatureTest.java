package ouzel.simulator.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ouzel.protocol.message.Readings.Switch;

/** The soil probe's signatures: common practice for gas-driven probes and solenoid valves, no source. */
final class SoilSignatureTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aMovingPlungerLeavesADipInTheCoilCurrent(long seed) {
        List<Integer> milliamps = Rig.waveform(new Rig(seed).run(Rig.VALVE, Rig.ON_GROUND, 100));

        assertThat(milliamps).hasSize(200);
        assertThat(Rig.dipDepth(milliamps)).isGreaterThan(25);
        assertThat(Rig.dipIndex(milliamps)).isBetween(10, 40);
        assertThat(milliamps.get(199)).isBetween(450, 560);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aStuckPlungerLeavesNoDipAndMovesNothing(long seed) {
        Rig rig = new Rig(seed, Fault.VALVE_STUCK);
        List<Integer> milliamps = Rig.waveform(rig.run(Rig.VALVE, Rig.ON_GROUND, 100));

        assertThat(Rig.dipDepth(milliamps)).isLessThan(10);
        assertThat(milliamps.get(199)).isBetween(450, 560);
        assertThat(rig.plant.truth().soil().valveOpenings()).isZero();
        assertThat(rig.plant.truth().soil().extensionMillimetres()).isZero();
    }

    @Test
    void aSluggishPlungerDipsLaterAndLess() {
        List<Integer> healthy = Rig.waveform(new Rig(1).run(Rig.VALVE, Rig.ON_GROUND, 100));
        List<Integer> sluggish = Rig.waveform(new Rig(1, Fault.VALVE_SLUGGISH).run(Rig.VALVE, Rig.ON_GROUND, 100));

        assertThat(Rig.dipIndex(sluggish)).isGreaterThan(Rig.dipIndex(healthy) + 4);
        assertThat(Rig.dipDepth(sluggish)).isLessThan(Rig.dipDepth(healthy) * 9 / 10);
    }

    @Test
    void anOpenCoilDrawsNothing() {
        List<Integer> milliamps = Rig.waveform(new Rig(1, Fault.COIL_OPEN).run(Rig.VALVE, Rig.ON_GROUND, 100));

        assertThat(milliamps).allSatisfy(sample -> assertThat(sample).isLessThan(12));
    }

    @Test
    void aShortedCoilDrivesTheSensorToItsEndAndMovesNothing() {
        Rig rig = new Rig(1, Fault.COIL_SHORTED);
        List<Integer> milliamps = Rig.waveform(rig.run(Rig.VALVE, Rig.ON_GROUND, 100));

        assertThat(milliamps.get(199)).isEqualTo(1_000);
        assertThat(rig.plant.truth().power().amperes()).isGreaterThan(2);
        assertThat(rig.plant.truth().soil().valveOpenings()).isZero();
    }

    @Test
    void theWaveformIsEmptyWhileTheCoilIsOff() {
        assertThat(new Rig(1).run(Outputs.OFF, Rig.ON_GROUND, 50))
                .allSatisfy(step -> assertThat(step.valveMilliamps()).isEmpty());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aStrokeGoesAwayAndComesHomeWithSoil(long seed) {
        Rig rig = new Rig(seed);
        List<Sensed> sensed = rig.stroke(Rig.ON_GROUND);
        Truth.Soil soil = rig.plant.truth().soil();

        assertThat(isHome(sensed.get(40))).isFalse();
        assertThat(isHome(sensed.get(sensed.size() - 1))).isTrue();
        assertThat(soil.strokesCompleted()).isEqualTo(1);
        assertThat(soil.sampleGrams()).isBetween(3.0, 4.5);
    }

    @Test
    void gasPressureDropsDuringTheStrokeAndRecovers() {
        Rig rig = new Rig(1);
        int before = rig.plant.step(Outputs.OFF, Rig.ON_GROUND).gasKilopascals();
        List<Sensed> sensed = rig.stroke(Rig.ON_GROUND);
        int lowest = sensed.stream().mapToInt(Sensed::gasKilopascals).min().orElseThrow();

        assertThat(before - lowest).isBetween(50, 200);
        assertThat(sensed.get(sensed.size() - 1).gasKilopascals()).isCloseTo(before, within(6));
    }

    /** Full thrust less the spring over the tip's area is 1.5 MPa; nothing goes through 3 MPa. */
    @Test
    void hardGroundStopsTheProbeShort() {
        Rig rig = new Rig(2);
        rig.stroke(Rig.at(Surroundings.Place.ON_GROUND, 3.0));
        Truth.Soil soil = rig.plant.truth().soil();

        assertThat(soil.strokesStarted()).isEqualTo(1);
        assertThat(soil.strokesCompleted()).isZero();
        assertThat(soil.sampleGrams()).isZero();
        assertThat(soil.peakReactionNewtons()).isBetween(60.0, 115.0);
    }

    @Test
    void inFreeAirTheProbeMeetsNothingAndBringsNothing() {
        Rig rig = new Rig(2);
        rig.stroke(Rig.ALOFT);

        assertThat(rig.plant.truth().soil().strokesCompleted()).isEqualTo(1);
        assertThat(rig.plant.truth().soil().sampleGrams()).isZero();
        assertThat(rig.plant.truth().soil().peakReactionNewtons()).isZero();
    }

    @Test
    void aSecondStrokeInTheSameHoleBringsNothingMore() {
        Rig rig = new Rig(3);
        rig.stroke(Rig.ON_GROUND);
        double first = rig.plant.truth().soil().sampleGrams();
        rig.stroke(Rig.ON_GROUND);

        assertThat(rig.plant.truth().soil().strokesCompleted()).isEqualTo(2);
        assertThat(rig.plant.truth().soil().sampleGrams()).isCloseTo(first, within(0.2));
    }

    @Test
    void aProbeStuckOutStaysOutUntilItIsFreed() {
        Rig rig = new Rig(4);
        rig.run(Rig.VALVE, Rig.ON_GROUND, 400);
        rig.plant.fault(Fault.PROBE_STUCK_OUT);
        List<Sensed> stuck = rig.run(Outputs.OFF, Rig.ON_GROUND, 3_000);
        rig.plant.clear(Fault.PROBE_STUCK_OUT);
        List<Sensed> freed = rig.run(Outputs.OFF, Rig.ON_GROUND, 3_000);

        assertThat(isHome(stuck.get(stuck.size() - 1))).isFalse();
        assertThat(isHome(freed.get(freed.size() - 1))).isTrue();
    }

    @Test
    void whatLeavesTheCartridgeIsInTheLineOrWentThroughTheValve() {
        Rig rig = new Rig(5);
        double chamberAtFirst = rig.plant.truth().gas().chamberGrams();
        for (int stroke = 0; stroke < 8; stroke++) {
            rig.stroke(Rig.ON_GROUND);
        }
        Truth.Gas gas = rig.plant.truth().gas();

        assertThat(gas.drawnGrams()).isCloseTo(gas.lineGrams() + gas.takenGrams() + gas.leakedGrams(), within(1e-9));
        assertThat(gas.takenGrams()).isCloseTo(gas.chamberGrams() - chamberAtFirst + gas.ventedGrams(), within(1e-9));
        assertThat(gas.takenGrams() / 8).isBetween(0.15, 0.30);
    }

    @Test
    void aLeakingLineEmptiesTheCartridge() {
        Rig rig = new Rig(6, Fault.GAS_LEAK);
        double before = rig.plant.truth().gas().cartridgeGrams();
        rig.run(Outputs.OFF, Rig.ON_GROUND, 60_000);

        assertThat(before - rig.plant.truth().gas().cartridgeGrams()).isGreaterThan(0.5);
        assertThat(rig.plant.truth().gas().leakedGrams()).isGreaterThan(0.5);
    }

    @Test
    void withoutThePlugTheCoilStaysCold() {
        Rig rig = new Rig(7, Fault.PLUG_OUT);
        List<Sensed> sensed = rig.run(Rig.VALVE, Rig.ON_GROUND, 300);

        assertThat(Rig.waveform(sensed)).allSatisfy(sample -> assertThat(sample).isLessThan(12));
        assertThat(sensed).noneMatch(step -> (step.switches() & Switch.PLUG.bit()) != 0);
        assertThat(rig.plant.truth().soil().home()).isTrue();
    }

    private static boolean isHome(Sensed sensed) {
        return (sensed.switches() & Switch.PROBE_HOME.bit()) != 0;
    }
}
