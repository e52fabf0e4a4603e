package ouzel.app.screen.model;

import java.util.Locale;
import ouzel.protocol.session.LinkHealth;

/** All that was measured of the link, in lines for a reader who wants more than the header has room for. */
final class LinkWords {
    private LinkWords() {}

    static String lines(LinkHealth link) {
        return String.join(
                "\n",
                "Delivered " + Words.percent(link.deliveryRatio()) + ", surely between "
                        + Words.percent(link.deliveryLow()) + " and " + Words.percent(link.deliveryHigh()),
                "There and back " + Words.millis(link.roundTripMillis()) + ", 95 of 100 within "
                        + Words.millis(link.roundTripHighMillis()),
                "Longest silence lately " + Words.millis(link.longestGapMillis()) + ", last frame "
                        + Words.millis(link.lastFrameAgeMillis()) + " ago",
                "Air time used " + Words.percent(link.airTimeShare()) + ": " + bytes(link.bytesDownPerSecond())
                        + " down, " + bytes(link.bytesUpPerSecond()) + " up",
                "Frames corrupt " + link.corrupt() + ", refused on board " + link.refused(),
                "Payload clock known to within " + Words.millis(link.clockUncertaintyMillis()));
    }

    private static String bytes(double perSecond) {
        return Double.isFinite(perSecond)
                ? String.format(Locale.ROOT, "%.0f bytes/s", perSecond)
                : Words.NO_VALUE + " bytes/s";
    }
}
