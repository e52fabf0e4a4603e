package ouzel.simulator.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class GasSupplyTest {
    private static final Surroundings ROOM =
            new Surroundings(Surroundings.Place.ON_GROUND, false, 0, 0, 20, 101_325, 1);

    private final PayloadProfile.Gas small = new PayloadProfile.Gas(16, 21.333, 45, 450, 16);
    private final GasSupply supply = new GasSupply(small, EnumSet.noneOf(Fault.class), ROOM);

    /**
     * Adiabatic draw of vapour from 20 °C, 16 g in 21.333 mL with 45 g of steel, by the full equation of state
     * of Span and Wagner 1996: 16.6 °C after 1 g, 12.9 °C after 2 g, 4.3 °C after 4 g. The plant takes the
     * liquid's heat capacity as constant, so the drop is held to a quarter only.
     */
    @ParameterizedTest
    @CsvSource({"1, 16.6", "2, 12.9", "4, 4.3"})
    void boilingOffCoolsTheCartridge(double grams, double celsius) {
        draw(grams);

        assertThat(20 - supply.cartridgeCelsius()).isCloseTo(20 - celsius, withinPercentage(25));
    }

    /** Span and Wagner 1996: at 20 °C pressure stays at 5.729 MPa until 194.2 kg/m3 x 21.333 mL = 4.14 g are left. */
    @Test
    void pressureSaysNothingAboutContentWhileLiquidIsLeft() {
        double full = supply.cartridgePascals();
        draw(8);
        rest(2_000_000);

        assertThat(full).isCloseTo(5.729e6, withinPercentage(0.1));
        assertThat(supply.cartridgeGrams()).isLessThan(8);
        assertThat(supply.cartridgePascals()).isCloseTo(full, withinPercentage(0.2));
    }

    @Test
    void theLastGramsAreGasWhosePressureFalls() {
        draw(13);
        rest(2_000_000);

        assertThat(supply.cartridgePascals()).isBetween(3e6, 4.2e6);
    }

    @Test
    void anEmptyCartridgeCannotHoldTheLine() {
        draw(15.75);
        supply.give(supply.lineGrams() * 0.9);
        rest(5_000);

        assertThat(supply.linePascals()).isLessThan(440_000);
    }

    @Test
    void theCartridgeWarmsUpAgain() {
        draw(4);
        rest(600_000);

        assertThat(supply.cartridgeCelsius()).isCloseTo(20, within(0.4));
    }

    @Test
    void warmerThanCriticalTheSupplyStillWorks() {
        Surroundings hot = new Surroundings(Surroundings.Place.ON_GROUND, false, 0, 0, 45, 101_325, 1);
        for (int step = 0; step < 60_000; step++) {
            supply.warm(hot);
            supply.refillStep();
        }

        assertThat(supply.cartridgeCelsius()).isCloseTo(45, within(1.0));
        assertThat(supply.cartridgePascals()).isGreaterThan(7e6);
    }

    private void draw(double grams) {
        double target = supply.cartridgeGrams() - grams;
        while (supply.cartridgeGrams() > target) {
            supply.give(Math.min(0.01, supply.lineGrams() / 2));
            supply.warm(ROOM);
            supply.refillStep();
        }
    }

    private void rest(int millis) {
        for (int elapsed = 0; elapsed < millis; elapsed += Plant.STEP_MILLIS) {
            supply.warm(ROOM);
            supply.refillStep();
        }
    }
}
