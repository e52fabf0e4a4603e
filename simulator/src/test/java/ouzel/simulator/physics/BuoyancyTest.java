package ouzel.simulator.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class BuoyancyTest {
    /** Box of 20 m by 8 m at 2 m draught in sea water of 1 025 kg/m3: 328 t, BM 2.667 m (recomputed). */
    @Test
    void aBoxDisplacesItsWeight() {
        assertThat(Buoyancy.draughtMetres(328_000, 1_025, 160)).isCloseTo(2, within(1e-9));
        assertThat(Buoyancy.metacentricRadiusMetres(Buoyancy.boxSecondMoment(20, 8), 320))
                .isCloseTo(2.6667, within(5e-5));
    }

    /** Barrass and Derrett, chapter 12: beam 10 m, draught 3.5 m, BM 2.38 m. */
    @Test
    void metacentricRadiusIsBarrassAndDerretts() {
        double perMetreOfLength = Buoyancy.boxSecondMoment(1, 10);

        assertThat(Buoyancy.metacentricRadiusMetres(perMetreOfLength, 35)).isCloseTo(2.38095, within(5e-6));
    }

    /** Own example, recomputed: hulls 0.60 by 0.10 m, 0.40 m apart, 6 kg in 1 000 kg/m3. */
    @Test
    void twinHullsStandFirm() {
        double draught = Buoyancy.draughtMetres(6, 1_000, 2 * 0.60 * 0.10);
        double secondMoment = Buoyancy.twinSecondMoment(0.60, 0.10, 0.40);

        assertThat(draught).isCloseTo(0.05, within(1e-12));
        assertThat(secondMoment).isCloseTo(0.0049, within(1e-12));
        assertThat(Buoyancy.metacentricRadiusMetres(secondMoment, 0.006)).isCloseTo(0.81667, within(5e-6));
        assertThat(Buoyancy.freeboardMetres(0.12, draught)).isCloseTo(0.07, within(1e-12));
    }

    /** Common practice, no source: four round floats of 66.7 mm carrying 5.3 kg are awash at about 0.38 m. */
    @Test
    void fourRoundFloatsAwash() {
        double density = Water.kilogramsPerCubicMetre(15);

        assertThat(Buoyancy.submergedCylinderMetres(5.3, density, 4, 0.0667)).isCloseTo(0.38, within(0.005));
    }

    @Test
    void refusesFloatsWithoutArea() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Buoyancy.draughtMetres(1, 1_000, 0))
                .withMessageContaining("waterplaneSquareMetres : 0.0 (expected: > 0)");
    }
}
