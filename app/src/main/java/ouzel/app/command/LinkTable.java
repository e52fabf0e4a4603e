package ouzel.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ouzel.app.flight.LinkTest;
import ouzel.protocol.session.LinkHealth;

/** What a link test found, as lines of text. */
final class LinkTable {
    private LinkTable() {}

    static List<String> lines(LinkTest.Result result) {
        LinkHealth link = result.health();
        List<String> lines = new ArrayList<>();
        lines.add(words(
                "Link to payload %d at %s, measured for %d s", result.payload(), result.where(), result.seconds()));
        lines.add(words(
                "  delivered        %6.1f %%    surely %.1f to %.1f %%; needed: surely %.0f %%",
                link.deliveryRatio() * 100,
                link.deliveryLow() * 100,
                link.deliveryHigh() * 100,
                LinkTest.LEAST_DELIVERY * 100));
        lines.add(words(
                "  there and back   %6.0f ms   95 of 100 within %.0f ms; needed: %d ms",
                link.roundTripMillis(), link.roundTripHighMillis(), LinkTest.LONGEST_ROUND_TRIP_MILLIS));
        lines.add(words("  questions        %6d      %d of them never answered", result.asked(), result.unanswered()));
        lines.add(words("  longest silence  %6.0f ms", link.longestGapMillis()));
        lines.add(words(
                "  air time         %6.1f %%    %.0f bytes/s down, %.0f bytes/s up",
                link.airTimeShare() * 100, link.bytesDownPerSecond(), link.bytesUpPerSecond()));
        lines.add(words(
                "  frames           %6d      %d lost, %d corrupt, %d refused on board since its start",
                link.heard(), link.lost(), link.corrupt(), link.refused()));
        lines.add(words(
                "  payload clock    %6.0f ms   ahead of this program's, give or take %.0f ms",
                link.clockOffsetMillis(), link.clockUncertaintyMillis()));
        lines.add(words("  breaks           %6d", result.breaks()));
        lines.addAll(verdict(result.shortcomings()));
        return lines;
    }

    private static List<String> verdict(List<String> shortcomings) {
        return shortcomings.isEmpty()
                ? List.of("Good enough to fly with.")
                : shortcomings.stream()
                        .map(why -> "Not good enough: " + why + ".")
                        .toList();
    }

    private static String words(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}
