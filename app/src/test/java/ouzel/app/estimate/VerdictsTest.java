package ouzel.app.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import ouzel.app.estimate.Verdict.Grade;

/** What a sample is worth, and why. */
final class VerdictsTest {
    private static final PumpModel PUMP = new PumpModel(8, 12_000, 650, 1_100, true, 0, 0.03);
    private static final ValveReading MOVED = new ValveReading(true, 9, 38, 520);
    private static final ValveReading STUCK = new ValveReading(false, 0, 0, 520);

    @Test
    void aWholeDoseThatBoardAndDeskAgreeOnIsAccepted() {
        Verdict verdict = Verdicts.ofDraw(draw(260, 3_300, 0, 260, Optional.empty()));

        assertThat(verdict.grade()).isEqualTo(Grade.ACCEPTED);
        assertThat(verdict.reasons()).singleElement().asString().contains("metered on board 260 mL");
    }

    @Test
    void enoughIsDecidedByTheLowerEndOfTheBand() {
        // 211 mL +/- 13 of 260: the value passes 80 %, its lower end does not.
        Verdict verdict = Verdicts.ofDraw(draw(260, 2_680, 0, 211, Optional.empty()));

        assertThat(verdict.grade()).isEqualTo(Grade.SUSPECT);
        assertThat(verdict.reasons()).anyMatch(reason -> reason.startsWith("may be short"));
    }

    @Test
    void aDoseMeteredOnBoardThatNothingWasSeenOfIsNoSample() {
        Verdict verdict = Verdicts.ofDraw(dry(260, 260));

        assertThat(verdict.grade()).isEqualTo(Grade.VOID);
        assertThat(verdict.reasons()).anyMatch(reason -> reason.contains("never drew its sample"));
    }

    @Test
    void aFigureFromOnBoardThatDoesNotAgreeIsSaid() {
        Verdict verdict = Verdicts.ofDraw(draw(260, 3_300, 0, 160, Optional.empty()));

        assertThat(verdict.reasons()).anyMatch(reason -> reason.contains("160 mL, does not agree"));
    }

    @Test
    void aTraceWithLargeHolesIsNotTrusted() {
        Verdict verdict = Verdicts.ofDraw(draw(260, 3_300, 700, 260, Optional.empty()));

        assertThat(verdict.grade()).isEqualTo(Grade.SUSPECT);
        assertThat(verdict.reasons()).anyMatch(reason -> reason.contains("of the current trace is missing"));
    }

    @Test
    void anEarlyEndIsNeverAccepted() {
        Verdict verdict = Verdicts.ofDraw(draw(260, 3_300, 0, 260, Optional.of("ended early: the jar is full")));

        assertThat(verdict.grade()).isEqualTo(Grade.SUSPECT);
    }

    @Test
    void aStrokeCountsOnlyWithItsDipAndItsWayBack() {
        assertThat(Verdicts.ofStroke(Optional.of(MOVED), Optional.empty(), 630).grade())
                .isEqualTo(Grade.ACCEPTED);
        assertThat(Verdicts.ofStroke(Optional.of(STUCK), Optional.empty(), 630).grade())
                .isEqualTo(Grade.VOID);
        assertThat(Verdicts.ofStroke(Optional.empty(), Optional.empty(), 630).grade())
                .isEqualTo(Grade.SUSPECT);
        assertThat(Verdicts.ofStroke(Optional.of(MOVED), Optional.of("probe away"), 2_300)
                        .grade())
                .isEqualTo(Grade.VOID);
    }

    @Test
    void everyReasonIsKept() {
        Verdict verdict = Verdicts.ofStroke(Optional.of(STUCK), Optional.of("the probe stayed"), 300);

        assertThat(verdict.reasons()).hasSize(2);
    }

    @Test
    void aBandIsShownWithAsManyDecimalsAsItMeans() {
        assertThat(new Amount(258.4, 8).text("mL")).isEqualTo("258 ± 16 mL");
        assertThat(new Amount(3.62, 0.6).text("g")).isEqualTo("3.6 ± 1.2 g");
        assertThat(new Amount(3, 4).lower()).isZero();
    }

    /** A draw of {@code samples} samples, all wet, on a pump of 8 mL/s. */
    private static Verdicts.DrawFacts draw(int asked, int samples, int missing, int metered, Optional<String> ending) {
        DrawEstimate estimate = DrawEstimate.START;
        for (int i = 0; i < samples; i++) {
            estimate = estimate.next(PUMP, 1_100, 12_000);
        }
        return new Verdicts.DrawFacts(PUMP, asked, estimate.amount(PUMP, missing), estimate, missing, metered, ending);
    }

    private static Verdicts.DrawFacts dry(int asked, int metered) {
        DrawEstimate estimate = DrawEstimate.START;
        for (int i = 0; i < 3_000; i++) {
            estimate = estimate.next(PUMP, 640, 12_000);
        }
        return new Verdicts.DrawFacts(PUMP, asked, estimate.amount(PUMP, 0), estimate, 0, metered, Optional.empty());
    }
}
