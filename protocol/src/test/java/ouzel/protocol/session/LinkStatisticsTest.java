package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ouzel.protocol.frame.Header;
import ouzel.protocol.frame.ParserCounts;

class LinkStatisticsTest {
    private final LinkStatistics statistics = new LinkStatistics();
    private long nowMillis;

    @Test
    void knowsNothingBeforeTheFirstFrame() {
        assertThat(health()).isEqualTo(LinkHealth.NONE);
        assertThat(statistics.lastFrameAgeMillis(0)).isEmpty();
    }

    @Test
    void countsTheFramesThatAreMissing() {
        hear(10, 11, 14, 15);

        assertThat(health().heard()).isEqualTo(4);
        assertThat(health().lost()).isEqualTo(2);
        assertThat(health().deliveryRatio()).isEqualTo(4.0 / 6, within(1e-12));
    }

    @Test
    void countsAcrossTheTurnOfTheSequence() {
        hear(65_534, 65_535, 1, 2);

        assertThat(health().lost()).isEqualTo(1);
    }

    @Test
    void takesBackTheLossOfAFrameThatComesLate() {
        hear(1, 2, 5, 4, 3);

        assertThat(health().lost()).isZero();
        assertThat(health().heard()).isEqualTo(5);
    }

    @Test
    void countsARepeatedFrameOnlyOnce() {
        hear(1, 2, 2, 4, 3, 3, 1);

        assertThat(health().heard()).isEqualTo(4);
        assertThat(health().lost()).isZero();
        assertThat(statistics.framesRepeated()).isEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 5_000, 40_000, 65_000})
    void aPayloadThatStartsAgainLosesNothing(int before) {
        nowMillis = 60_000;
        hear(before, before + 1);
        nowMillis = 30;
        hear(0, 1, 3);

        assertThat(health().lost()).isEqualTo(1);
        assertThat(health().heard()).isEqualTo(5);
    }

    @Test
    void aLeapThatNoSenderCanMakeIsNoLoss() {
        hear(1, 2, 20_000, 20_001);

        assertThat(health().lost()).isZero();
    }

    @Test
    void aLongSilenceIsALossOfAllThatWasSent() {
        hear(1, 2);
        nowMillis += 60_000;
        hear(902);

        assertThat(health().lost()).isEqualTo(899);
    }

    @Test
    void theDeliveryRatioForgetsWhatIsOlderThanTenSeconds() {
        hear(1, 11);
        nowMillis = 12_000;
        hear(12, 13);

        assertThat(health().deliveryRatio()).isEqualTo(1.0);
        assertThat(health().lost()).isEqualTo(9);
        nowMillis = 40_000;
        assertThat(health().deliveryRatio()).isNaN();
    }

    @Test
    void passesOnWhatTheParserThrewAway() {
        statistics.parserCounts(new ParserCounts(100, 1, 2, 3, 4));

        assertThat(health().corrupt()).isEqualTo(10);
    }

    @Test
    void tellsTheAgeOfTheLastFrame() {
        hear(1);
        nowMillis += 730;

        assertThat(statistics.lastFrameAgeMillis(nanos())).hasValue(730);
    }

    @Test
    void theRoundTripIsTheMedianFromOrderToFirstOutcome() {
        trip(1, 100);
        trip(2, 900);
        assertThat(health().roundTripMillis()).isEqualTo(500);
        trip(3, 300);
        assertThat(health().roundTripMillis()).isEqualTo(300);
    }

    @Test
    void aRetransmittedOrderCountsFromItsFirstSending() {
        statistics.orderSent(7, nanos());
        nowMillis += 400;
        statistics.orderSent(7, nanos());
        nowMillis += 50;
        statistics.outcomeHeard(7, header(0), nanos());
        statistics.outcomeHeard(7, header(0), nanos());

        assertThat(health().roundTripMillis()).isEqualTo(450);
    }

    @Test
    void remembersOnlyTheLastTripsAndOnlySoManyOpenOrders() {
        trip(1, 5_000);
        for (int order = 2; order < 2 + RoundTrips.REMEMBERED; order++) {
            trip(order, 80);
        }
        for (int order = 1_000; order < 1_100; order++) {
            statistics.orderSent(order, nanos());
        }
        nowMillis += 9_000;
        statistics.outcomeHeard(1_000, header(0), nanos());

        assertThat(health().roundTripMillis()).isEqualTo(80);
    }

    @Test
    void anOrderWithoutAnIdIsNotTimed() {
        trip(0, 100);

        assertThat(health().roundTripMillis()).isNaN();
    }

    @Test
    void theDeliveryComesWithItsInterval() {
        hear(IntStream.rangeClosed(1, 18).toArray());
        hear(20);

        // Wilson 1927 for 19 of 20, computed.
        assertThat(health().deliveryLow()).isEqualTo(0.763869, within(1e-6));
        assertThat(health().deliveryHigh()).isEqualTo(0.991119, within(1e-6));
    }

    @Test
    void ninetyFiveOfAHundredTripsStayWithinTheHighRoundTrip() {
        IntStream.rangeClosed(1, 101).forEach(order -> trip(order, order));

        assertThat(health().roundTripMillis()).isEqualTo(51);
        assertThat(health().roundTripHighMillis()).isEqualTo(96);
    }

    @Test
    void theLongestGapIsToldForTenSecondsAndGrowsWhileNothingComes() {
        hear(1);
        nowMillis += 2_500;
        hear(2);
        nowMillis += 40;

        assertThat(health().longestGapMillis()).isEqualTo(2_500);
        assertThat(health().lastFrameAgeMillis()).isEqualTo(40);
        nowMillis += 20_000;
        assertThat(health().longestGapMillis()).isEqualTo(20_040);
        hear(3);
        nowMillis += 11_000;
        hear(4);
        nowMillis += 11_000;
        hear(5, 6);
        assertThat(health().longestGapMillis()).isEqualTo(11_000);
    }

    @Test
    void theAirTimeIsWhatBothDirectionsUseOfTheLine() {
        for (int second = 0; second < 20; second++) {
            nowMillis = second * 1_000L + 5;
            hear(10 * second, 10 * second + 1);
            statistics.frameSent(44, nanos());
        }

        assertThat(health().bytesDownPerSecond()).isEqualTo(100);
        assertThat(health().bytesUpPerSecond()).isEqualTo(44);
        assertThat(health().airTimeShare()).isEqualTo(0.025, within(1e-12));
    }

    @Test
    void aNewConnectionDoesNotForgetWhatTheLastOneThrewAway() {
        statistics.parserCounts(new ParserCounts(100, 1, 2, 3, 4));
        statistics.parserCounts(ParserCounts.NONE);
        statistics.parserCounts(new ParserCounts(5, 0, 1, 0, 0));

        assertThat(health().corrupt()).isEqualTo(11);
    }

    @Test
    void passesOnWhatThePayloadRefused() {
        statistics.refusedOnBoard(17);

        assertThat(health().refused()).isEqualTo(17);
    }

    @Test
    void theShortestTripTellsThePayloadsClock() {
        nowMillis = 10_000;
        tripWithClockAhead(1, 400, 100, 5_000);
        tripWithClockAhead(2, 30, 50, 5_000);
        tripWithClockAhead(3, 900, 20, 5_000);

        assertThat(health().clockOffsetMillis()).isEqualTo(5_000, within(health().clockUncertaintyMillis()));
        assertThat(health().clockUncertaintyMillis()).isEqualTo(41);
    }

    @Test
    void aPayloadsClockThatWrapsIsStillALittleAhead() {
        nowMillis = 0x1_0000_0000L - 500;
        tripWithClockAhead(1, 20, 20, 600);

        assertThat(health().clockOffsetMillis()).isEqualTo(600, within(21.0));
    }

    @Test
    void aPayloadThatStartsAgainHasANewClock() {
        nowMillis = 50_000;
        hear(1);
        tripWithClockAhead(1, 20, 20, 0);
        statistics.frameHeard(new Header(Header.VERSION, 0x42, 5, 2, 100), 50, nanos());

        assertThat(health().clockOffsetMillis()).isNaN();
    }

    private void tripWithClockAhead(long order, long upMillis, long downMillis, long aheadMillis) {
        statistics.orderSent(order, nanos());
        nowMillis += upMillis;
        long payloadMillis = nowMillis + aheadMillis & 0xFFFF_FFFFL;
        nowMillis += downMillis;
        statistics.outcomeHeard(order, new Header(Header.VERSION, 0x42, 5, 0, payloadMillis), nanos());
    }

    private Header header(int sequence) {
        return new Header(Header.VERSION, 0x42, 5, sequence, nowMillis & 0xFFFF_FFFFL);
    }

    private void trip(long order, long millis) {
        statistics.orderSent(order, nanos());
        nowMillis += millis;
        statistics.outcomeHeard(order, header(0), nanos());
    }

    private void hear(int... sequences) {
        for (int sequence : sequences) {
            statistics.frameHeard(header(sequence), 50, nanos());
        }
    }

    private LinkHealth health() {
        return statistics.health(nanos());
    }

    private long nanos() {
        return nowMillis * 1_000_000;
    }
}
