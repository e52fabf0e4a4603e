package ouzel.simulator.controller;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Readings.Switch;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;

/** The table of permissives, row by row: what arms, what trips, and after how long. */
class PermissivesTest {

    /** Sampler, permissive, what spoils it, what heals it, time until it counts as met again, ms. */
    static Stream<Arguments> armRows() {
        return Stream.of(
                row(Sampler.WATER, Permissive.PLUG_FITTED, off(Switch.PLUG), on(Switch.PLUG), 1_000),
                row(
                        Sampler.WATER,
                        Permissive.BATTERY,
                        w -> w.batteryMillivolts = 10_799,
                        w -> w.batteryMillivolts = 10_800,
                        1_000),
                row(
                        Sampler.WATER,
                        Permissive.AFLOAT,
                        off(Switch.FLOAT_A).andThen(off(Switch.FLOAT_B)),
                        on(Switch.FLOAT_A),
                        2_000),
                row(Sampler.WATER, Permissive.INTAKE_WET, off(Switch.INTAKE), on(Switch.INTAKE), 1_000),
                row(Sampler.WATER, Permissive.LEVEL_WATER, w -> w.tiltTenths = 151, w -> w.tiltTenths = 149, 2_000),
                row(Sampler.WATER, Permissive.QUIET, w -> w.motionMilligees = 151, w -> w.motionMilligees = 149, 2_000),
                row(Sampler.WATER, Permissive.JAR_EMPTY, on(Switch.JAR_FULL), off(Switch.JAR_FULL), 0),
                row(Sampler.WATER, Permissive.BAY_DRY, on(Switch.BAY_WET), off(Switch.BAY_WET), 0),
                row(Sampler.AIR, Permissive.INLET_DRY, on(Switch.INLET), off(Switch.INLET), 2_000),
                row(Sampler.AIR, Permissive.BAG_SLACK, w -> w.bagPascals = 201, w -> w.bagPascals = 200, 0),
                row(Sampler.SOIL, Permissive.ON_GROUND, off(Switch.LEGS), on(Switch.LEGS), 2_000),
                row(Sampler.SOIL, Permissive.FLOATS_DRY, on(Switch.FLOAT_B), off(Switch.FLOAT_B), 2_000),
                row(Sampler.SOIL, Permissive.LEVEL_SOIL, w -> w.tiltTenths = 81, w -> w.tiltTenths = 79, 2_000),
                row(Sampler.SOIL, Permissive.STILL, w -> w.motionMilligees = 51, w -> w.motionMilligees = 49, 2_000),
                row(
                        Sampler.SOIL,
                        Permissive.ROTORS_STOPPED,
                        w -> w.vibrationMilligees = 61,
                        w -> w.vibrationMilligees = 59,
                        3_000),
                row(Sampler.SOIL, Permissive.PROBE_HOME, off(Switch.PROBE_HOME), on(Switch.PROBE_HOME), 1_000),
                row(Sampler.SOIL, Permissive.GAS_PRESSURE, w -> w.gasKilopascals = 349, w -> w.gasKilopascals = 350, 0),
                row(
                        Sampler.SOIL,
                        Permissive.GAS_PRESSURE,
                        w -> w.gasKilopascals = 551,
                        w -> w.gasKilopascals = 550,
                        0));
    }

    @ParameterizedTest
    @MethodSource("armRows")
    void armsOnlyAfterTheValueHasStayedInsideForItsTime(
            Sampler sampler, Permissive permissive, Consumer<World> spoil, Consumer<World> heal, int afterMillis) {
        Bench bench = Bench.readyFor(sampler);
        spoil.accept(bench.world);
        bench.run(20);
        assertThat(bench.unmet(sampler)).contains(permissive);

        heal.accept(bench.world);
        bench.run(Math.max(10, afterMillis));
        boolean early = afterMillis > 0 && bench.unmet(sampler).isEmpty();
        bench.run(10);

        assertThat(early).isFalse();
        assertThat(bench.unmet(sampler)).isEmpty();
    }

    /** Sampler, permissive, what stays inside the trip band, what lies outside, time until it trips, ms. */
    static Stream<Arguments> tripRows() {
        return Stream.of(
                row(Sampler.WATER, Permissive.PLUG_FITTED, on(Switch.PLUG), off(Switch.PLUG), 0),
                row(
                        Sampler.WATER,
                        Permissive.BATTERY,
                        w -> w.batteryMillivolts = 9_600,
                        w -> w.batteryMillivolts = 9_599,
                        500),
                row(
                        Sampler.WATER,
                        Permissive.AFLOAT,
                        off(Switch.FLOAT_A),
                        off(Switch.FLOAT_B).andThen(off(Switch.FLOAT_A)),
                        1_000),
                row(Sampler.WATER, Permissive.INTAKE_WET, on(Switch.INTAKE), off(Switch.INTAKE), 1_000),
                row(Sampler.WATER, Permissive.LEVEL_WATER, w -> w.tiltTenths = 249, w -> w.tiltTenths = 251, 500),
                row(Sampler.WATER, Permissive.QUIET, w -> w.motionMilligees = 349, w -> w.motionMilligees = 351, 2_000),
                row(Sampler.WATER, Permissive.JAR_EMPTY, off(Switch.JAR_FULL), on(Switch.JAR_FULL), 0),
                row(Sampler.WATER, Permissive.BAY_DRY, off(Switch.BAY_WET), on(Switch.BAY_WET), 0),
                row(Sampler.AIR, Permissive.INLET_DRY, off(Switch.INLET), on(Switch.INLET), 50),
                row(Sampler.AIR, Permissive.BAG_SLACK, w -> w.bagPascals = 1_000, w -> w.bagPascals = 1_001, 0),
                row(Sampler.SOIL, Permissive.ON_GROUND, on(Switch.LEGS), off(Switch.LEGS), 20),
                row(Sampler.SOIL, Permissive.FLOATS_DRY, off(Switch.FLOAT_C), on(Switch.FLOAT_C), 50),
                row(Sampler.SOIL, Permissive.LEVEL_SOIL, w -> w.tiltTenths = 119, w -> w.tiltTenths = 121, 200),
                row(Sampler.SOIL, Permissive.STILL, w -> w.motionMilligees = 79, w -> w.motionMilligees = 81, 200),
                row(
                        Sampler.SOIL,
                        Permissive.ROTORS_STOPPED,
                        w -> w.vibrationMilligees = 89,
                        w -> w.vibrationMilligees = 91,
                        200),
                row(Sampler.SOIL, Permissive.PROBE_HOME, on(Switch.PROBE_HOME), off(Switch.PROBE_HOME), 0),
                row(Sampler.SOIL, Permissive.GAS_PRESSURE, w -> w.gasKilopascals = 280, w -> w.gasKilopascals = 279, 0),
                row(
                        Sampler.SOIL,
                        Permissive.GAS_PRESSURE,
                        w -> w.gasKilopascals = 620,
                        w -> w.gasKilopascals = 621,
                        0));
    }

    @ParameterizedTest
    @MethodSource("tripRows")
    void tripsAnArmedSamplerOnlyOutsideTheWiderBandForItsTime(
            Sampler sampler, Permissive permissive, Consumer<World> inside, Consumer<World> outside, int afterMillis) {
        Bench bench = Bench.readyFor(sampler);
        bench.arm(sampler);
        inside.accept(bench.world);
        bench.run(2_500);
        outside.accept(bench.world);
        bench.run(afterMillis);
        boolean early = !bench.events(Event.Kind.DISARMED).isEmpty();

        bench.run(10);

        assertThat(early).isFalse();
        assertThat(bench.events(Event.Kind.DISARMED))
                .extracting(Event::reason, Event::value)
                .containsExactly(tuple(Reason.PERMISSIVE, permissive.code()));
    }

    @Test
    void theAirSamplerWaitsTenMinutesAfterTheProbeHasVented() {
        Bench bench = Bench.acting(Sampler.SOIL);
        bench.run(1_000);
        long ended = bench.events(Event.Kind.STROKE_COMPLETED).get(0).timeMillis();

        bench.run(ended + 599_990 - bench.now);
        boolean early = bench.unmet(Sampler.AIR).isEmpty();
        bench.run(10);

        assertThat(early).isFalse();
        assertThat(bench.unmet(Sampler.AIR)).isEmpty();
    }

    @Test
    void afterARestartWithinTheHoldTheWholeHoldRunsAgain() {
        Bench bench = Bench.acting(Sampler.SOIL);
        bench.run(300_000);

        bench.restart(BootCause.BROWN_OUT).settle();

        assertThat(bench.unmet(Sampler.AIR)).contains(Permissive.NO_VENTED_GAS);
        bench.run(600_000);
        assertThat(bench.unmet(Sampler.AIR)).isEmpty();
    }

    @Test
    void theStartUpTestFailsWhileAPumpDrawsCurrentUndriven() {
        Bench bench = new Bench();
        bench.world.afloat().leakMilliamps = 101;

        bench.settle();

        assertThat(bench.unmet(Sampler.WATER)).contains(Permissive.SELF_TEST);
    }

    @Test
    void aValueOutOfItsRangeIsNoValue() {
        Bench bench = Bench.readyFor(Sampler.WATER);
        bench.world.tiltTenths = 1_801;
        bench.run(20);

        long order = bench.send(new Arm(Sampler.WATER, 100, 0));

        assertThat(bench.outcome(order)).isEqualTo(Outcome.unmet(order, Permissive.LEVEL_WATER, Readings.ABSENT, 150));
    }

    @Test
    void theBatteryIsNotJudgedForArmingWhileAPumpLoadsIt() {
        Bench bench = Bench.acting(Sampler.WATER);
        bench.world.batteryMillivolts = 10_000;
        bench.run(35_000);
        bench.world.batteryMillivolts = 11_000;
        bench.run(500);

        assertThat(bench.state(Sampler.WATER)).isEqualTo(SamplerState.DONE);
        assertThat(bench.unmet(Sampler.AIR)).contains(Permissive.BATTERY);
    }

    private static Arguments row(
            Sampler sampler, Permissive permissive, Consumer<World> first, Consumer<World> then, int afterMillis) {
        return Arguments.of(sampler, permissive, first, then, afterMillis);
    }

    private static Consumer<World> on(Switch which) {
        return world -> world.set(which, true);
    }

    private static Consumer<World> off(Switch which) {
        return world -> world.set(which, false);
    }
}
