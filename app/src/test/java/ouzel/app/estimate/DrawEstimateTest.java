package ouzel.app.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The running estimate of a draw, on hand-made currents. */
final class DrawEstimateTest {
    private static final PumpModel WATER = new PumpModel(8, 12_000, 650, 1_100, true, 0, 0.03);
    private static final PumpModel WITH_TUBE = new PumpModel(8, 12_000, 650, 1_100, true, 11, 0.03);
    private static final PumpModel AIR = new PumpModel(20, 12_000, 370, 450, false, 0, 0.03);

    private DrawEstimate estimate = DrawEstimate.START;

    @Test
    void countsFromPrimingNotFromSwitchingOn() {
        feed(WATER, 4_000, 10);
        feed(WATER, 650, 290);
        feed(WATER, 1_100, 1_000);

        assertThat(estimate.primedAfterSeconds()).isCloseTo(3.0, within(0.1));
        assertThat(estimate.millilitres()).isCloseTo(80, within(1.0));
    }

    @Test
    void inrushAloneIsNoPriming() {
        feed(WATER, 4_000, 30);
        feed(WATER, 640, 500);

        assertThat(estimate.isPrimed()).isFalse();
        assertThat(estimate.amount(WATER, 0).value()).isZero();
    }

    @Test
    void nothingCountsWhileThePumpRunsDryAgain() {
        feed(WATER, 1_100, 500);
        double before = estimate.millilitres();
        feed(WATER, 650, 500);

        assertThat(estimate.wet()).isFalse();
        assertThat(estimate.millilitres()).isCloseTo(before, within(3.0));
    }

    @Test
    void theThresholdAndTheFlowFollowTheVoltage() {
        for (int i = 0; i < 1_040; i++) {
            // At 9 V a wet pump draws what a dry one draws at 12 V and a little more.
            estimate = estimate.next(WATER, 825, 9_000);
        }

        assertThat(estimate.isPrimed()).isTrue();
        assertThat(estimate.millilitres()).isCloseTo(60, within(1.5));
    }

    @Test
    void aPumpThatNeedsNoPrimingCountsAtOnce() {
        feed(AIR, 450, 1_000);

        assertThat(estimate.millilitres()).isCloseTo(200, within(2.0));
    }

    @Test
    void whatStaysInTheTubeIsNotInTheContainer() {
        feed(WITH_TUBE, 1_100, 1_040);

        Amount amount = estimate.amount(WITH_TUBE, 0);
        assertThat(amount.value()).isCloseTo(estimate.millilitres() - 11, within(1e-9));
    }

    /** Independent parts add in quadrature (JCGM 100:2008, 5.1.2). */
    @Test
    void theUncertaintyIsTheRootOfTheSumOfSquares() {
        feed(WITH_TUBE, 1_100, 1_040);

        double flow = estimate.millilitres() * 0.03;
        double priming = 8 * 0.1;
        double tube = 11 * 0.2;
        assertThat(estimate.amount(WITH_TUBE, 0).standardUncertainty())
                .isCloseTo(Math.sqrt(flow * flow + priming * priming + tube * tube), within(1e-9));
    }

    @Test
    void missingSamplesWidenTheBand() {
        feed(WATER, 1_100, 1_000);

        assertThat(estimate.amount(WATER, 200).band())
                .isGreaterThan(estimate.amount(WATER, 0).band());
    }

    /** Common practice, no source: 0.5 L in 11.4 s is a mean flow of 2.63 L/min. */
    @Test
    void aSteadyFlowIntegratesToItsVolume() {
        PumpModel pump = new PumpModel(2_630.0 / 60, 12_000, 370, 450, false, 0, 0.03);

        feed(pump, 450, 1_140);

        assertThat(estimate.millilitres()).isCloseTo(500, within(1.0));
    }

    private void feed(PumpModel pump, int milliamps, int samples) {
        for (int i = 0; i < samples; i++) {
            estimate = estimate.next(pump, milliamps, 12_000);
        }
    }
}
