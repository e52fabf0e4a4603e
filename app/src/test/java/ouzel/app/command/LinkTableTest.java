package ouzel.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import ouzel.app.flight.LinkTest;
import ouzel.protocol.session.LinkHealth;

class LinkTableTest {
    @Test
    void aGoodLinkIsSaidToBeGood() {
        LinkTest.Result result = result(0.978, 180, 100, 2, 0);

        assertThat(result.isGoodEnough()).isTrue();
        assertThat(LinkTable.lines(result)).last().isEqualTo("Good enough to fly with.");
        assertThat(String.join("\n", LinkTable.lines(result)))
                .contains("surely 97.8 to 99.2 %")
                .contains("95 of 100 within 180 ms")
                .contains("2 of them never answered");
    }

    @Test
    void eachShortcomingIsNamedWithWhatToDo() {
        assertThat(result(0.8999, 180, 100, 0, 0).shortcomings())
                .singleElement()
                .asString()
                .contains("aerials");
        assertThat(result(0.95, 1_001, 100, 0, 0).shortcomings())
                .singleElement()
                .asString()
                .contains("too late");
        assertThat(result(0.95, 180, 100, 6, 0).shortcomings())
                .singleElement()
                .asString()
                .contains("never");
        assertThat(result(0.95, 180, 100, 0, 1).shortcomings())
                .singleElement()
                .asString()
                .contains("cable");
    }

    @Test
    void aLinkOnWhichNothingCameIsNotGood() {
        LinkTest.Result silent = new LinkTest.Result("COM3@57600", 7, 20, LinkHealth.NONE, 0, 0, 0);

        assertThat(silent.shortcomings()).hasSize(2);
    }

    private static LinkTest.Result result(double low, double high, int asked, int unanswered, int breaks) {
        LinkHealth health = new LinkHealth(987, 13, 0.987, 4, 42, low, 0.9924, high, 620, 35, 1_700, 316, 9, -12, 21);
        return new LinkTest.Result("/dev/ttyUSB0@57600", 7, 20, health, asked, unanswered, breaks);
    }
}
