package ouzel.simulator.controller;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.KeepAlive;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Outcome.Stage;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Trigger;
import ouzel.protocol.session.Envelope;
import ouzel.simulator.plant.Fault;
import ouzel.simulator.plant.Plant;
import ouzel.simulator.plant.Surroundings;
import ouzel.simulator.plant.Surroundings.Place;
import ouzel.simulator.profile.ProfileFile;

/** The controller on the simulated payload, whose readings are noisy and whose figures differ from unit to unit. */
class OnThePlantTest {
    private static final Surroundings AFLOAT = new Surroundings(Place.AFLOAT, false, 2, 30, 15, 101_300, 1);
    private static final Surroundings GROUNDED = new Surroundings(Place.ON_GROUND, false, 2, 0, 15, 101_300, 0.6);

    private Plant plant;
    private NonVolatile memory;
    private Controller controller;
    private Surroundings surroundings;
    private long now;
    private long nextOrderId = 1;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void drawsWaterToAboutTheAskedDose(long unit) {
        setUp(unit, AFLOAT);

        long trigger = sample(Sampler.WATER, 200, 45_000);

        assertThat(memory.outcomes().of(trigger).map(Outcome::reason)).contains(Reason.DOSE_REACHED);
        assertThat(memory.use(Sampler.WATER)).isEqualTo(SamplerState.DONE);
        assertThat(plant.truth().water().jarMillilitres()).isCloseTo(200, within(35.0));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void drawsAirToAboutTheAskedDose(long unit) {
        setUp(unit, GROUNDED);

        long trigger = sample(Sampler.AIR, 500, 45_000);

        assertThat(memory.outcomes().of(trigger).map(Outcome::reason)).contains(Reason.DOSE_REACHED);
        assertThat(plant.truth().air().bagMillilitres()).isCloseTo(500, within(50.0));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void strokesOnceAndComesHome(long unit) {
        setUp(unit, GROUNDED);

        long trigger = sample(Sampler.SOIL, 200, 5_000);

        assertThat(memory.outcomes().of(trigger)).contains(Outcome.of(trigger, Stage.COMPLETED));
        assertThat(plant.truth().soil().valveOpenings()).isEqualTo(1);
        assertThat(plant.truth().soil().home()).isTrue();
    }

    @Test
    void findsAnOpenPumpWire() {
        setUp(3, AFLOAT);
        plant.fault(Fault.WATER_PUMP_OPEN);

        long trigger = sample(Sampler.WATER, 200, 10_000);

        assertThat(memory.outcomes().of(trigger).map(Outcome::reason)).contains(Reason.NO_CURRENT);
        assertThat(memory.use(Sampler.WATER)).isEqualTo(SamplerState.FAULT);
    }

    @Test
    void findsAProbeStuckInTheGround() {
        setUp(3, GROUNDED);
        plant.fault(Fault.PROBE_STUCK_OUT);

        long trigger = sample(Sampler.SOIL, 200, 5_000);

        assertThat(memory.outcomes().of(trigger).map(Outcome::reason)).contains(Reason.PROBE_AWAY);
    }

    @Test
    void findsAValveThatDoesNotOpen() {
        setUp(3, GROUNDED);
        plant.fault(Fault.VALVE_STUCK);

        long trigger = sample(Sampler.SOIL, 200, 5_000);

        assertThat(memory.outcomes().of(trigger).map(Outcome::reason)).contains(Reason.PROBE_STAYED);
    }

    @Test
    void believesNoFrozenTiltSensor() {
        setUp(3, AFLOAT);
        plant.fault(Fault.TILT_FROZEN);
        run(6_000);

        Outcome refused =
                memory.outcomes().of(send(new Arm(Sampler.WATER, 200, 0))).orElseThrow();

        assertThat(refused.permissive()).isEqualTo(Permissive.LEVEL_WATER.code());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void neverTakesALiveSensorOnStillGroundForAFrozenOne(long unit) {
        setUp(unit, new Surroundings(Place.ON_GROUND, false, 0, 0, 15, 101_300, 0.6));

        for (int minute = 0; minute < 3; minute++) {
            run(60_000);
            Optional<Outcome> outcome = memory.outcomes().of(send(new Arm(Sampler.SOIL, 200, 0)));

            assertThat(outcome.map(Outcome::stage)).contains(Stage.COMPLETED);
        }
    }

    private void setUp(long unit, Surroundings where) {
        SplittableRandom tokens = new SplittableRandom(unit);
        plant = new Plant(ProfileFile.reference(), unit);
        memory = new NonVolatile(Limits.factorySettings());
        controller = new Controller(memory, Limits.standard(), tokens::nextLong, Capability.all(), BootCause.POWER);
        surroundings = where;
        controller.sessionOpened(1, 0);
        run(6_000);
    }

    /** Arms, triggers, and lets {@code millis} pass; gives the trigger's order id. */
    private long sample(Sampler sampler, int dose, int millis) {
        Outcome armed = memory.outcomes().of(send(new Arm(sampler, dose, 0))).orElseThrow();
        assertThat(armed.stage()).as("arming: %s", armed).isEqualTo(Stage.COMPLETED);
        long trigger = send(new Trigger(sampler, armed.token()));
        run(millis);
        return trigger;
    }

    private long send(Order order) {
        controller.accept(new Envelope(1, nextOrderId, now + 1_000, order), now);
        return nextOrderId++;
    }

    private void run(int millis) {
        for (long until = now + millis; now < until; ) {
            now += Controller.STEP_MILLIS;
            if (now % 300 == 0) {
                controller.accept(new Envelope(1, 0, now + 1_000, new KeepAlive()), now);
            }
            controller.step(now, plant.step(controller.outputs(), surroundings));
            controller.drain();
        }
    }
}
