package ouzel.simulator.controller;

import java.util.Collections;
import java.util.List;
import ouzel.protocol.message.Readings.Switch;
import ouzel.protocol.message.Sampler;
import ouzel.simulator.plant.Outputs;
import ouzel.simulator.plant.Sensed;

/** Readings made by hand: as quiet and obliging as a test needs them, with the little noise that live sensors have. */
final class World {
    static final int WATER_WET_MILLIAMPS = 1_100;
    static final int AIR_MILLIAMPS = 450;
    private static final int PROBE_LEAVES_MILLIS = 60;
    private static final int PROBE_RETURNS_MILLIS = 200;

    int batteryMillivolts = 12_000;
    int tiltTenths = 20;
    int motionMilligees = 20;
    int vibrationMilligees = 20;
    int bagPascals = 20;
    int gasKilopascals = 450;
    int waterMilliamps = WATER_WET_MILLIAMPS;
    int airMilliamps = AIR_MILLIAMPS;
    int leakMilliamps;
    boolean probeStays;
    boolean probeNeverReturns;
    boolean tiltFrozen;
    private int switches = Switch.PLUG.bit() | Switch.PROBE_HOME.bit();
    private int noise;
    private long openMillis;
    private long closedMillis;
    private boolean extended;

    World afloat() {
        return set(Switch.FLOAT_A, true)
                .set(Switch.FLOAT_B, true)
                .set(Switch.FLOAT_C, true)
                .set(Switch.INTAKE, true);
    }

    World onGround() {
        return set(Switch.LEGS, true);
    }

    World readyFor(Sampler sampler) {
        return switch (sampler) {
            case WATER -> afloat();
            case AIR -> this;
            case SOIL -> onGround();
        };
    }

    World set(Switch which, boolean closed) {
        switches = closed ? switches | which.bit() : switches & ~which.bit();
        return this;
    }

    /** The readings after one step of 10 ms in which {@code driven} was driven. */
    Sensed step(Outputs driven) {
        noise = 1 - noise;
        moveProbe(driven.soilValve());
        return new Sensed(
                batteryMillivolts,
                50,
                tiltTenths + (tiltFrozen ? 0 : noise),
                motionMilligees + noise,
                vibrationMilligees + noise,
                150,
                10_100,
                bagPascals,
                gasKilopascals,
                switches,
                driven.waterPump() ? waterMilliamps : leakMilliamps,
                driven.airPump() ? airMilliamps : 0,
                driven.soilValve() ? Collections.nCopies(20, 500) : List.of());
    }

    private void moveProbe(boolean open) {
        openMillis = open ? openMillis + 10 : 0;
        closedMillis = open ? 0 : closedMillis + 10;
        if (!probeStays && openMillis >= PROBE_LEAVES_MILLIS && !extended) {
            extended = true;
            set(Switch.PROBE_HOME, false);
        }
        if (extended && !probeNeverReturns && closedMillis >= PROBE_RETURNS_MILLIS) {
            extended = false;
            set(Switch.PROBE_HOME, true);
        }
    }
}
