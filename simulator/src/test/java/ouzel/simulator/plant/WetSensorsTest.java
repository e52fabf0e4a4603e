package ouzel.simulator.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import ouzel.protocol.message.Readings.Switch;
import ouzel.simulator.plant.Surroundings.Place;

final class WetSensorsTest {
    private final EnumSet<Fault> faults = EnumSet.noneOf(Fault.class);
    private final WetSensors contacts = new WetSensors(faults);

    @Test
    void aSplashShorterThanTheContactsDelayIsNotSeen() {
        steps(14, Place.AFLOAT, 0);
        steps(1, Place.ALOFT, 0);
        steps(14, Place.AFLOAT, 0);

        assertThat(is(Switch.FLOAT_A)).isFalse();
    }

    @Test
    void floatsDrySlowly() {
        steps(100, Place.AFLOAT, 0);
        steps(60, Place.ALOFT, 0);
        assertThat(is(Switch.FLOAT_A)).isTrue();

        steps(60, Place.ALOFT, 0);
        assertThat(is(Switch.FLOAT_A)).isFalse();
    }

    @Test
    void aLegThatLiftsIsSeenAtOnce() {
        steps(10, Place.ON_GROUND, 0);
        assertThat(is(Switch.LEGS)).isTrue();

        steps(1, Place.ALOFT, 0);
        assertThat(is(Switch.LEGS)).isFalse();
    }

    @Test
    void tiltLiftsTheFloatsOneAfterTheOtherAndDipsTheInlet() {
        steps(200, Place.AFLOAT, 32);
        assertThat(is(Switch.FLOAT_A)).isFalse();
        assertThat(is(Switch.FLOAT_B)).isTrue();
        assertThat(is(Switch.INLET)).isFalse();

        steps(200, Place.AFLOAT, 60);
        assertThat(is(Switch.FLOAT_B)).isFalse();
        assertThat(is(Switch.INLET)).isTrue();
        assertThat(contacts.isIntakeUnder()).isFalse();
    }

    @Test
    void plugAndBayFollowTheirFaults() {
        assertThat(is(Switch.PLUG)).isTrue();
        assertThat(is(Switch.BAY_WET)).isFalse();

        faults.add(Fault.PLUG_OUT);
        faults.add(Fault.BAY_WET);

        assertThat(is(Switch.PLUG)).isFalse();
        assertThat(is(Switch.BAY_WET)).isTrue();
    }

    private void steps(int count, Place place, double tilt) {
        for (int step = 0; step < count; step++) {
            contacts.step(place, tilt, 0);
        }
    }

    private boolean is(Switch which) {
        return (contacts.bits() & which.bit()) != 0;
    }
}
