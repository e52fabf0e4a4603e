package ouzel.simulator.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;

final class BatteryPackTest {
    private final PayloadProfile.Pack figures = new PayloadProfile.Pack(3, 1_800, 0.075, 1, 0.1);
    private final EnumSet<Fault> faults = EnumSet.noneOf(Fault.class);
    private final BatteryPack pack = new BatteryPack(figures, faults);

    /** Charge is current times time: 1.8 A for 20 min is 600 mAh. */
    @Test
    void chargeIsCurrentTimesTime() {
        run(1.8, 20, 1_200_000);

        assertThat(pack.milliampHours()).isCloseTo(1_200, within(1e-6));
        assertThat(pack.charge()).isCloseTo(2.0 / 3, within(1e-9));
    }

    @Test
    void voltageSagsAtOnceAndALittleMoreOverSeconds() {
        double open = pack.volts();
        run(4, 20, 10);
        double atOnce = pack.volts();
        run(4, 20, 20_000);

        assertThat(open - atOnce).isCloseTo(0.30, within(0.01));
        assertThat(atOnce - pack.volts()).isBetween(0.1, 0.25);
    }

    @Test
    void theColdDoublesTheSag() {
        double open = pack.volts();
        run(4, -25, 10);

        assertThat(open - pack.volts()).isCloseTo(0.60, within(0.02));
    }

    @Test
    void aWornPackSagsFourTimesAsMuch() {
        faults.add(Fault.PACK_WORN);
        double open = pack.volts();
        run(4, 20, 10);

        assertThat(open - pack.volts()).isCloseTo(1.20, within(0.01));
    }

    @Test
    void anEmptyPackGivesNoVoltage() {
        run(3.6, 20, 1_900_000);

        assertThat(pack.charge()).isZero();
        assertThat(pack.volts()).isZero();
    }

    @Test
    void voltageFallsAllTheWayDown() {
        double last = pack.volts() + 0.001;
        for (int part = 0; part < 60; part++) {
            run(1.8, 20, 60_000);
            assertThat(pack.volts()).isLessThan(last);
            last = pack.volts();
        }
    }

    private void run(double amperes, double celsius, int millis) {
        for (int elapsed = 0; elapsed < millis; elapsed += Plant.STEP_MILLIS) {
            pack.step(amperes, celsius);
        }
    }
}
