package ouzel.simulator.controller;

import java.util.EnumMap;
import java.util.Map;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Settings;

/**
 * Everything fixed in the controller's program: no order can pass these.
 *
 * @param bands one band per permissive
 * @param ceilings the greatest settings that are accepted
 * @param waterPump limits of the water pump
 * @param airPump limits of the air pump
 * @param stroke limits of the soil stroke
 * @param bagStopPascals bag pressure that ends an air draw, Pa
 * @param bagHardPascals bag pressure that ends an air draw at once and as a fault, Pa
 * @param settleMillis how long a level switch or the bag's stop pressure must last to end a draw, ms
 * @param keepAliveMillis longest silence of the console while a sampler is armed or acting, ms
 * @param staleMillis oldest reading that satisfies a permissive, ms
 * @param frozenMillis longest time in which a noisy sensor may give the same value, ms
 * @param hazardousAheadMillis furthest expiry of an arm or trigger order that is believed, ms ahead
 * @param otherAheadMillis furthest expiry of any other order, ms ahead
 * @param ventHoldSeconds how long vented gas keeps the air sampler from arming, s
 */
public record Limits(
        Map<Permissive, Band> bands,
        Settings ceilings,
        PumpLimits waterPump,
        PumpLimits airPump,
        StrokeLimits stroke,
        int bagStopPascals,
        int bagHardPascals,
        int settleMillis,
        int keepAliveMillis,
        int staleMillis,
        int frozenMillis,
        int hazardousAheadMillis,
        int otherAheadMillis,
        int ventHoldSeconds) {

    private static final int VENT_HOLD_SECONDS = 600;
    private static final int BAG_STOP_PASCALS = 1_000;
    private static final int BATTERY_ARM_MILLIVOLTS = 10_800;
    private static final int BATTERY_TRIP_MILLIVOLTS = 9_600;

    /** Checks that every permissive has a band. */
    public Limits {
        for (Permissive permissive : Permissive.values()) {
            if (!bands.containsKey(permissive)) {
                throw new IllegalArgumentException("bands : none for " + permissive + " (expected: one for each)");
            }
        }
        bands = Map.copyOf(bands);
    }

    /** The limits of the reference payload. */
    public static Limits standard() {
        return new Limits(
                standardBands(),
                new Settings(400, 680, 500, 90_000, 90_000, 20, 2_000, 6_000, 10_000, true, true),
                PumpLimits.of(850, 2_750),
                PumpLimits.of(150, 1_150),
                new StrokeLimits(300, 2_000, 20),
                BAG_STOP_PASCALS,
                2_000,
                50,
                1_500,
                1_000,
                5_000,
                2_500,
                12_000,
                VENT_HOLD_SECONDS);
    }

    /** The settings a new controller leaves the workshop with; all below {@link #standard()}'s ceilings. */
    public static Settings factorySettings() {
        return new Settings(300, 620, 250, 60_000, 60_000, 12, 830, 2_100, 10_000, true, true);
    }

    Band band(Permissive permissive) {
        return bands.get(permissive);
    }

    PumpLimits pump(Sampler sampler) {
        return sampler == Sampler.WATER ? waterPump : airPump;
    }

    private static Map<Permissive, Band> standardBands() {
        Map<Permissive, Band> bands = new EnumMap<>(Permissive.class);
        bands.put(Permissive.PLUG_FITTED, Band.yes(1_000, 0));
        bands.put(Permissive.BATTERY, Band.atLeast(BATTERY_ARM_MILLIVOLTS, BATTERY_TRIP_MILLIVOLTS, 1_000, 500));
        bands.put(Permissive.SELF_TEST, Band.yes(0, 0));
        bands.put(Permissive.ALONE, Band.yes(0, 0));
        bands.put(Permissive.BAY_DRY, Band.yes(0, 0));
        putWater(bands);
        putAir(bands);
        putSoil(bands);
        return bands;
    }

    private static void putWater(Map<Permissive, Band> bands) {
        bands.put(Permissive.AFLOAT, Band.atLeast(2, 2, 2_000, 1_000));
        bands.put(Permissive.INTAKE_WET, Band.yes(1_000, 1_000));
        bands.put(Permissive.LEVEL_WATER, Band.atMost(150, 250, 2_000, 500));
        bands.put(Permissive.QUIET, Band.atMost(150, 350, 2_000, 2_000));
        bands.put(Permissive.JAR_EMPTY, Band.yes(0, 0));
    }

    private static void putAir(Map<Permissive, Band> bands) {
        bands.put(Permissive.INLET_DRY, Band.yes(2_000, 50));
        bands.put(Permissive.BAG_SLACK, Band.atMost(200, BAG_STOP_PASCALS, 0, 0));
        bands.put(Permissive.NO_VENTED_GAS, Band.atLeast(VENT_HOLD_SECONDS, VENT_HOLD_SECONDS, 0, 0));
    }

    private static void putSoil(Map<Permissive, Band> bands) {
        bands.put(Permissive.ON_GROUND, Band.yes(2_000, 20));
        bands.put(Permissive.FLOATS_DRY, Band.atMost(0, 0, 2_000, 50));
        bands.put(Permissive.LEVEL_SOIL, Band.atMost(80, 120, 2_000, 200));
        bands.put(Permissive.STILL, Band.atMost(50, 80, 2_000, 200));
        bands.put(Permissive.ROTORS_STOPPED, Band.atMost(60, 90, 3_000, 200));
        bands.put(Permissive.PROBE_HOME, Band.yes(1_000, 0));
        bands.put(Permissive.GAS_PRESSURE, new Band(350, 550, 280, 620, 0, 0));
        bands.put(Permissive.STROKES_LEFT, Band.atLeast(1, 1, 0, 0));
    }
}
