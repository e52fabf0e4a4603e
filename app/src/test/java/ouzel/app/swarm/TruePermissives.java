package ouzel.app.swarm;

import java.util.Arrays;
import java.util.Set;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.Sampler;
import ouzel.simulator.plant.Fault;
import ouzel.simulator.plant.Surroundings.Place;
import ouzel.simulator.rehearsal.Pilot;

/** Whether what the samplers need is really so, by the plant and the pilot; a sensor gets its own time to notice. */
final class TruePermissives {
    private static final int NOTICE_MILLIS = 30;
    /** A float's contact dries this slowly, ms. */
    private static final int FLOAT_MILLIS = 930;
    /** The intake's contact, ms. */
    private static final int INTAKE_MILLIS = 430;
    /** Time that a place must have lasted before it arms, less the contacts' own, ms. */
    private static final int DWELL_MILLIS = 1_950;

    private final Scene scene;
    private final int capabilities;
    private final long[] badSince = new long[4];
    private Place place = Place.ALOFT;
    private long placeSince;

    TruePermissives(Scene scene, int capabilities) {
        this.scene = scene;
        this.capabilities = capabilities;
        Arrays.fill(badSince, -1);
    }

    void look(Pilot pilot, Set<Fault> faults) {
        if (pilot.place() != place) {
            place = pilot.place();
            placeSince = scene.nowMillis();
        }
        note(0, faults.contains(Fault.PLUG_OUT));
        note(1, faults.contains(Fault.BAY_WET) && has(Capability.BAY_LEAK));
        note(2, place != Place.AFLOAT);
        note(3, place != Place.ON_GROUND);
    }

    private void note(int index, boolean bad) {
        if (!bad) {
            badSince[index] = -1;
        } else if (badSince[index] < 0) {
            badSince[index] = scene.nowMillis();
        }
    }

    boolean isPlugOut() {
        return badSince[0] >= 0;
    }

    void heldToStart(Sampler sampler) {
        good(0, NOTICE_MILLIS, "the plug is out");
        good(1, NOTICE_MILLIS, "the bay is wet");
        if (sampler == Sampler.WATER && has(Capability.INTAKE_WET)) {
            good(2, INTAKE_MILLIS, "water drawn out of the water");
        }
        if (sampler == Sampler.WATER && has(Capability.FLOAT_WET)) {
            good(2, FLOAT_MILLIS, "water drawn out of the water");
        }
        if (sampler == Sampler.SOIL && has(Capability.GROUND_CONTACT)) {
            good(3, NOTICE_MILLIS, "a stroke in the air");
        }
    }

    void heldToArm(Sampler sampler) {
        heldToStart(sampler);
        long dwelt = scene.nowMillis() - placeSince;
        boolean water = sampler == Sampler.WATER && place == Place.AFLOAT && has(Capability.FLOAT_WET);
        boolean soil = sampler == Sampler.SOIL && place == Place.ON_GROUND && has(Capability.GROUND_CONTACT);
        scene.holds(
                !(water || soil) || dwelt >= DWELL_MILLIS, "permissives hold at the arming", dwelt + " ms in place");
    }

    private void good(int index, int noticeMillis, String what) {
        boolean noticed = badSince[index] >= 0 && scene.nowMillis() - badSince[index] > noticeMillis;
        scene.holds(!noticed, "permissives hold at the start", what);
    }

    private boolean has(Capability capability) {
        return (capabilities & capability.bit()) != 0;
    }
}
