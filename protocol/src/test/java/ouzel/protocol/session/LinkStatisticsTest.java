package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
        statistics.outcomeHeard(7, nanos());
        statistics.outcomeHeard(7, nanos());

        assertThat(health().roundTripMillis()).isEqualTo(450);
    }

    @Test
    void remembersOnlyTheLastTripsAndOnlySoManyOpenOrders() {
        trip(1, 5_000);
        for (int order = 2; order < 40; order++) {
            trip(order, 80);
        }
        for (int order = 100; order < 200; order++) {
            statistics.orderSent(order, nanos());
        }
        nowMillis += 9_000;
        statistics.outcomeHeard(100, nanos());

        assertThat(health().roundTripMillis()).isEqualTo(80);
    }

    @Test
    void anOrderWithoutAnIdIsNotTimed() {
        trip(0, 100);

        assertThat(health().roundTripMillis()).isNaN();
    }

    private void trip(long order, long millis) {
        statistics.orderSent(order, nanos());
        nowMillis += millis;
        statistics.outcomeHeard(order, nanos());
    }

    private void hear(int... sequences) {
        for (int sequence : sequences) {
            statistics.frameHeard(new Header(Header.VERSION, 0x42, 5, sequence, nowMillis), nanos());
        }
    }

    private LinkHealth health() {
        return statistics.health(nanos());
    }

    private long nanos() {
        return nowMillis * 1_000_000;
    }
}
