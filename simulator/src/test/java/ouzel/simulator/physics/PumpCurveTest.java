package ouzel.simulator.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class PumpCurveTest {
    private final PumpCurve litresPerMinuteByMetres = new PumpCurve(1.0, 10);

    /** The straight line of the textbooks (from memory): 1 L/min free, 10 m at stall. */
    @ParameterizedTest
    @CsvSource({"0, 1.00", "2.5, 0.75", "5, 0.50", "7.5, 0.25", "10, 0", "12, 0"})
    void flowFallsInAStraightLineAndNeverTurnsBack(double metres, double litresPerMinute) {
        assertThat(litresPerMinuteByMetres.flow(metres)).isCloseTo(litresPerMinute, within(1e-12));
    }

    /** The same line: half a litre at 2.5 m takes 40.0 s. */
    @Test
    void halfALitreAtAQuarterOfTheHeadTakesFortySeconds() {
        assertThat(0.5 / litresPerMinuteByMetres.flow(2.5) * 60).isCloseTo(40.0, within(1e-9));
    }

    /** Common practice, no source: 0.5 L in 11.4 s is 2.63 L/min. */
    @Test
    void meanFlowOfAQuickFill() {
        assertThat(PumpCurve.meanLitresPerMinute(500, 11.4)).isCloseTo(2.63, within(0.005));
    }

    @Test
    void refusesAPumpWithoutFlow() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PumpCurve(0, 10))
                .withMessageContaining("freeFlow : 0.0");
    }
}
