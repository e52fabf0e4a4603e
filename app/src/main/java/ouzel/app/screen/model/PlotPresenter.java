package ouzel.app.screen.model;

import java.util.List;
import ouzel.app.desk.Draw;
import ouzel.app.desk.Lane;
import ouzel.app.desk.Stroke;
import ouzel.app.estimate.Series;
import ouzel.protocol.message.CurrentTrace;
import ouzel.protocol.message.ValveWaveform;

/** What a lane's plot draws, and over which axes. */
final class PlotPresenter {
    /** A running draw shows its last stretch of this length, s. */
    static final double WINDOW_SECONDS = 30;

    private static final double[] CURRENT_TOPS = {500, 1_000, 2_000, 4_000, 8_000, 16_000, 32_000, 66_000};
    private static final double VALVE_SECONDS = 0.1;
    private static final double LEAD_SECONDS = 0.5;
    private static final int INRUSH_SAMPLES = CurrentTrace.RATE_HZ / 2;

    private PlotPresenter() {}

    static PlotView view(Lane lane, boolean fresh) {
        return lane.sampler().isPumped() ? pump(lane, fresh) : valve(lane);
    }

    private static PlotView pump(Lane lane, boolean fresh) {
        double fillTop = top(lane.dose() * 1.15, 100);
        return lane.draw()
                .map(draw -> pump(draw, fillTop, fresh))
                .orElse(empty(PlotView.Kind.PUMP, CurrentTrace.RATE_HZ, WINDOW_SECONDS, 1_000, fillTop));
    }

    private static PlotView pump(Draw draw, double fillTop, boolean fresh) {
        boolean running = draw.ended().isEmpty();
        double from = running ? Math.max(0, draw.seconds() - WINDOW_SECONDS) : 0;
        double to = running ? from + WINDOW_SECONDS : Math.max(5, Math.ceil(draw.seconds() + 1));
        int last = draw.fill().length() - 1;
        double most = last < 0
                ? 0
                : (draw.fill().at(last)
                                + draw.band().at(Math.min(last, draw.band().length() - 1)))
                        / 10.0;
        return new PlotView(
                PlotView.Kind.PUMP,
                CurrentTrace.RATE_HZ,
                draw.current(),
                draw.fill(),
                draw.band(),
                draw.marks(),
                from - LEAD_SECONDS,
                to,
                currentTop(draw.current(), INRUSH_SAMPLES),
                Math.max(fillTop, top(most, 100)),
                running && !fresh,
                draw.missing() == 0 ? "" : draw.missing() + " samples lost on the way");
    }

    private static PlotView valve(Lane lane) {
        return lane.stroke()
                .map(PlotPresenter::valve)
                .orElse(empty(PlotView.Kind.VALVE, ValveWaveform.RATE_HZ, VALVE_SECONDS, 1_000, 1));
    }

    private static PlotView valve(Stroke stroke) {
        List<Draw.Mark> marks = stroke.reading()
                .filter(reading -> reading.moved())
                .map(reading -> List.of(new Draw.Mark(reading.dipMillis() / 1000, "seated")))
                .orElse(List.of());
        return new PlotView(
                PlotView.Kind.VALVE,
                ValveWaveform.RATE_HZ,
                stroke.coil(),
                Series.empty(),
                Series.empty(),
                marks,
                0,
                Math.max(VALVE_SECONDS, stroke.coil().length() / (double) ValveWaveform.RATE_HZ),
                currentTop(stroke.coil(), 0),
                1,
                false,
                "");
    }

    private static PlotView empty(PlotView.Kind kind, int rate, double to, double currentTop, double fillTop) {
        return new PlotView(
                kind,
                rate,
                Series.empty(),
                Series.empty(),
                Series.empty(),
                List.of(),
                kind == PlotView.Kind.PUMP ? -LEAD_SECONDS : 0,
                to,
                currentTop,
                fillTop,
                false,
                "");
    }

    /**
     * The least of a few fixed tops that holds the whole series, so that the axis seldom moves and never shrinks. The
     * inrush of a pump, several times what it draws afterwards, may leave the plot on top.
     */
    static double currentTop(Series current, int firstSample) {
        int most = 0;
        for (int i = firstSample; i < current.length(); i++) {
            most = Math.max(most, current.at(i));
        }
        for (double top : CURRENT_TOPS) {
            if (most <= top * 0.95) {
                return top;
            }
        }
        return CURRENT_TOPS[CURRENT_TOPS.length - 1];
    }

    private static double top(double least, double step) {
        return Math.max(step, Math.ceil(least / step) * step);
    }
}
