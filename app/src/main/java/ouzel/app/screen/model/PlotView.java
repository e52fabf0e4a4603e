package ouzel.app.screen.model;

import java.util.List;
import ouzel.app.desk.Draw;
import ouzel.app.estimate.Series;

/**
 * What one live plot draws. The series are the desk's own and immutable, so nothing is copied.
 *
 * @param kind which plot
 * @param samplesPerSecond rate of every series
 * @param current measured current, mA
 * @param fill estimated fill, 0.1 mL; empty where there is none
 * @param band half width of its band (k = 2), 0.1 mL; as long as {@code fill}
 * @param marks what happened when, s
 * @param from left end of the time axis, s
 * @param to right end of the time axis, s
 * @param currentTop upper end of the current axis, mA
 * @param fillTop upper end of the fill axis, mL
 * @param stale true if what it shows has stopped coming though more should come
 * @param note what is missing in it; may be empty
 */
public record PlotView(
        Kind kind,
        int samplesPerSecond,
        Series current,
        Series fill,
        Series band,
        List<Draw.Mark> marks,
        double from,
        double to,
        double currentTop,
        double fillTop,
        boolean stale,
        String note) {

    /** Which plot. */
    public enum Kind {
        /** Pump current over seconds, with the fill. */
        PUMP,
        /** Valve coil current over the first tenth of a second. */
        VALVE
    }

    public PlotView {
        marks = List.copyOf(marks);
    }
}
