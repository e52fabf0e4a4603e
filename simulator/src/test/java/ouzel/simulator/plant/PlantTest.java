package ouzel.simulator.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ouzel.protocol.message.Readings.Switch;
import ouzel.protocol.message.Sampler;

final class PlantTest {
    @Test
    void theSameSeedAndCallsGiveTheSameReadings() {
        assertThat(sortie(new Rig(11))).isEqualTo(sortie(new Rig(11)));
    }

    @Test
    void everySeedMakesAnotherUnit() {
        Set<List<Sensed>> sorties = new HashSet<>();
        Set<Double> volumes = new HashSet<>();
        for (long seed = 0; seed < 20; seed++) {
            Rig rig = new Rig(seed);
            sorties.add(sortie(rig));
            volumes.add(rig.plant.truth().water().jarMillilitres());
        }

        assertThat(sorties).hasSize(20);
        assertThat(volumes).hasSize(20);
    }

    @Test
    void aStepIsTenMilliseconds() {
        Rig rig = new Rig(1);
        rig.run(Outputs.OFF, Rig.ALOFT, 1_230);

        assertThat(rig.plant.truth().elapsedMillis()).isEqualTo(1_230);
    }

    @Test
    void allOffNothingMoves() {
        Rig rig = new Rig(2);
        rig.run(Outputs.OFF, Rig.AFLOAT, 60_000);
        Truth truth = rig.plant.truth();

        assertThat(truth.water().drawnMillilitres()).isZero();
        assertThat(truth.air().bagMillilitres()).isZero();
        assertThat(truth.soil().extensionMillimetres()).isZero();
        assertThat(truth.gas().takenGrams()).isZero();
    }

    @Test
    void contactsTellWhereThePayloadIs() {
        Rig rig = new Rig(3);

        assertThat(closed(rig, Rig.AFLOAT))
                .containsExactlyInAnyOrder(
                        Switch.PLUG, Switch.FLOAT_A, Switch.FLOAT_B, Switch.FLOAT_C, Switch.INTAKE, Switch.PROBE_HOME);
        assertThat(closed(rig, Rig.ON_GROUND)).containsExactlyInAnyOrder(Switch.PLUG, Switch.LEGS, Switch.PROBE_HOME);
        assertThat(closed(rig, Rig.ALOFT)).containsExactlyInAnyOrder(Switch.PLUG, Switch.PROBE_HOME);
    }

    @Test
    void turningRotorsShakeAndWavesRock() {
        Surroundings rough = new Surroundings(Surroundings.Place.AFLOAT, true, 6, 200, 4, 98_000, 0);
        Rig rig = new Rig(4);
        rig.run(Outputs.OFF, rough, 3_000);
        List<Sensed> sensed = rig.run(Outputs.OFF, rough, 20_000);

        assertThat(Rig.mean(sensed, Sensed::vibrationMilligees)).isBetween(250.0, 400.0);
        assertThat(Rig.mean(sensed, Sensed::motionMilligees)).isCloseTo(206, within(30.0));
        assertThat(Rig.mean(sensed, Sensed::tiltTenths)).isCloseTo(60, within(12.0));
        assertThat(Rig.mean(sensed, Sensed::temperatureTenths)).isCloseTo(40, within(5.0));
        assertThat(Rig.mean(sensed, Sensed::pressureTensPascals)).isCloseTo(9_800, within(9.0));
    }

    /** Charge is current times time: what the pack lost is the idle current over the time, within the unit's spread. */
    @Test
    void thePackLosesTheChargeThatFlowed() {
        Rig rig = new Rig(5);
        double before = rig.plant.truth().power().milliampHours();
        rig.run(Outputs.OFF, Rig.ALOFT, 360_000);

        double lost = before - rig.plant.truth().power().milliampHours();

        assertThat(lost).isCloseTo(Rig.PROFILE.pack().idleAmperes() * 100, within(1.3));
    }

    @Test
    void reloadFitsAFreshContainerEach() {
        Rig rig = new Rig(6);
        sortie(rig);
        for (Sampler sampler : Sampler.values()) {
            rig.plant.reload(sampler);
        }
        Truth truth = rig.plant.truth();

        assertThat(truth.water().jarMillilitres()).isZero();
        assertThat(truth.water().standingMillilitres()).isZero();
        assertThat(truth.air().bagMillilitres()).isZero();
        assertThat(truth.soil().sampleGrams()).isZero();
        assertThat(truth.gas().cartridgeGrams()).isCloseTo(25, within(0.4));
    }

    @Test
    void aFrozenTiltSensorRepeatsItsLastValue() {
        Rig rig = new Rig(7);
        int last = rig.run(Outputs.OFF, Rig.AFLOAT, 1_000).get(99).tiltTenths();
        rig.plant.fault(Fault.TILT_FROZEN);

        assertThat(rig.run(Outputs.OFF, Rig.AFLOAT, 2_000))
                .allSatisfy(step -> assertThat(step.tiltTenths()).isEqualTo(last));
    }

    @Test
    void faultsAreListedUntilCleared() {
        Rig rig = new Rig(8, Fault.BAG_LEAK, Fault.PLUG_OUT);
        rig.plant.clear(Fault.BAG_LEAK);

        assertThat(rig.plant.faults()).containsExactly(Fault.PLUG_OUT);
    }

    private static List<Sensed> sortie(Rig rig) {
        List<Sensed> sensed = new ArrayList<>(rig.run(Rig.WATER, Rig.AFLOAT, 12_000));
        sensed.addAll(rig.run(Rig.AIR, Rig.ALOFT, 5_000));
        sensed.addAll(rig.stroke(Rig.ON_GROUND));
        return sensed;
    }

    private static Set<Switch> closed(Rig rig, Surroundings surroundings) {
        rig.run(Outputs.OFF, surroundings, 2_000);
        int bits = rig.plant.step(Outputs.OFF, surroundings).switches();
        Set<Switch> closed = new HashSet<>();
        for (Switch each : Switch.values()) {
            if ((bits & each.bit()) != 0) {
                closed.add(each);
            }
        }
        return closed;
    }
}
