package ouzel.simulator.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

final class HoseTest {
    @Test
    void waterArrivesOneVolumeLater() {
        Hose hose = new Hose(32);
        double before = pushed(hose, 31.9, 1);
        double after = pushed(hose, 10, 1);

        assertThat(before).isCloseTo(0, within(1.01));
        assertThat(after).isCloseTo(10, within(1.01));
        assertThat(hose.waterMillilitres()).isCloseTo(32, within(1e-9));
    }

    @Test
    void aSlugOfAirComesOutAsLongAsItWentIn() {
        Hose hose = new Hose(32);
        pushed(hose, 40, 1);
        pushed(hose, 8, 0);
        double out = pushed(hose, 40, 1);

        assertThat(40 - out).isCloseTo(8, within(1e-9));
    }

    @Property(tries = 200)
    void waterIsNeitherMadeNorLost(@ForAll long seed, @ForAll @DoubleRange(min = 4, max = 100) double volume) {
        Noise noise = new Noise(seed);
        Hose hose = new Hose(volume);
        double in = 0;
        double out = 0;
        for (int push = 0; push < 300; push++) {
            double moved = noise.uniform(0, volume / 32);
            double wet = noise.uniform(0, 1);
            in += moved * wet;
            out += hose.push(moved, wet);
        }

        assertThat(out + hose.waterMillilitres()).isCloseTo(in, within(1e-9 * in));
    }

    @Test
    void drainingGivesWhatStoodInIt() {
        Hose hose = new Hose(32);
        pushed(hose, 12, 1);

        assertThat(hose.drain()).isCloseTo(12, within(1e-9));
        assertThat(hose.waterMillilitres()).isZero();
    }

    private static double pushed(Hose hose, double millilitres, double wet) {
        double out = 0;
        for (int part = 0; part < millilitres * 10 - 0.5; part++) {
            out += hose.push(0.1, wet);
        }
        return out;
    }
}
