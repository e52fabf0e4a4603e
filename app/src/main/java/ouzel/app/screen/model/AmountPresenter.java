package ouzel.app.screen.model;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import ouzel.app.desk.Draw;
import ouzel.app.desk.Lane;
import ouzel.app.desk.Phase;
import ouzel.app.desk.Stroke;
import ouzel.app.estimate.Amount;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Sampler;

/** How much is aboard, and the live values that belong to it. */
final class AmountPresenter {
    private static final double TENTHS = 10.0;

    private AmountPresenter() {}

    static Cell fill(Freshness freshness, Lane lane) {
        return lane.sampler().isPumped() ? pumped(freshness, lane) : stroke(lane);
    }

    private static Cell pumped(Freshness freshness, Lane lane) {
        Optional<Draw> drawn = lane.draw().filter(draw -> draw.fill().length() > 0);
        if (drawn.isEmpty()) {
            String nothing = Words.NO_VALUE + " of " + lane.dose() + " mL";
            return new Cell("fill", nothing, "nothing drawn", Standing.NONE, Attention.CALM);
        }
        Draw draw = drawn.get();
        if (isOfFormerContainer(lane, draw)) {
            return new Cell("last fill", lastFill(draw), "in the container before", Standing.NONE, Attention.CALM);
        }
        boolean stale = draw.ended().isEmpty() && !freshness.isFresh();
        return new Cell(
                "fill",
                lastFill(draw) + " of " + asked(lane),
                stale ? freshness.ageIfStale() : "",
                stale ? Standing.STALE : Standing.LIVE,
                Attention.CALM);
    }

    /** A sampler that is fresh again has had its container changed since. */
    private static boolean isOfFormerContainer(Lane lane, Draw draw) {
        return draw.ended().isPresent() && (lane.phase() == Phase.SAFE || lane.phase() == Phase.ARMED);
    }

    /** What the draw was armed for; the lane's own dose may have been set for the next one since. */
    private static int asked(Lane lane) {
        return lane.arm()
                .filter(track -> track.order() instanceof Arm)
                .map(track -> ((Arm) track.order()).dose())
                .orElse(lane.dose());
    }

    private static String lastFill(Draw draw) {
        int last = draw.fill().length() - 1;
        double band = last < draw.band().length() ? draw.band().at(last) / TENTHS : 0;
        return new Amount(draw.fill().at(last) / TENTHS, band / Amount.COVERAGE).text("mL");
    }

    private static Cell stroke(Lane lane) {
        if (lane.stroke().isEmpty()) {
            return new Cell("valve", Words.NO_VALUE, "no stroke yet", Standing.NONE, Attention.CALM);
        }
        Stroke stroke = lane.stroke().get();
        return stroke.reading()
                .map(reading -> reading.moved()
                        ? new Cell(
                                "valve",
                                String.format(Locale.ROOT, "seated %.1f ms", reading.dipMillis()),
                                String.format(Locale.ROOT, "dip %.0f mA", reading.dipMilliamps()),
                                Standing.LIVE,
                                Attention.CALM)
                        : new Cell("valve", "did not move", "no dip in its current", Standing.LIVE, Attention.ALARM))
                .orElseGet(() -> new Cell("valve", "reading", waveform(stroke), Standing.LIVE, Attention.ACTIVE));
    }

    private static String waveform(Stroke stroke) {
        return stroke.expected() == 0
                ? "waiting for the waveform"
                : "waveform " + heard(stroke) + " of " + stroke.expected();
    }

    private static long heard(Stroke stroke) {
        return IntStream.range(0, stroke.coil().length())
                .filter(i -> stroke.coil().at(i) != Stroke.NOT_YET)
                .count();
    }

    static Cell facts(Freshness freshness, Lane lane) {
        String value = freshness
                .state()
                .status()
                .map(heard -> facts(lane.sampler(), heard.status().readings()))
                .orElse("");
        return new Cell(caption(lane.sampler()), value, freshness.ageIfStale(), freshness.standing(), Attention.CALM);
    }

    private static String caption(Sampler sampler) {
        return switch (sampler) {
            case WATER -> "tilt";
            case AIR -> "bag";
            case SOIL -> "gas";
        };
    }

    private static String facts(Sampler sampler, Readings readings) {
        return switch (sampler) {
            case WATER -> Words.reading(readings.tiltTenths(), TENTHS, 1, "°");
            case AIR -> Words.reading(readings.bagPascals(), 1, 0, "Pa");
            case SOIL ->
                Words.reading(readings.gasKilopascals(), 1, 0, "kPa") + ", "
                        + Words.reading(readings.strokesLeft(), 1, 0, "strokes left");
        };
    }
}
