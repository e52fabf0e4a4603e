package ouzel.app.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ouzel.app.estimate.DrawEstimate;
import ouzel.app.estimate.Series;

/**
 * One draw as it is seen: the pump's current and what it says about the fill, 100 samples a second from the instant the
 * pump was switched on.
 *
 * @param orderId the trigger that started it
 * @param started when the console learnt that it started
 * @param ended when the console learnt that it ended; empty while it runs
 * @param current pump current, mA; a sample that never arrived reads as its neighbour before it
 * @param missing samples that never arrived
 * @param fill estimated fill at each sample, 0.1 mL
 * @param band half width of its band (k = 2) at each sample, 0.1 mL
 * @param estimate the estimator's state after the last sample
 * @param marks what happened when, for the plot
 */
public record Draw(
        long orderId,
        Moment started,
        Optional<Moment> ended,
        Series current,
        int missing,
        Series fill,
        Series band,
        DrawEstimate estimate,
        List<Mark> marks) {

    /**
     * Something worth a line on the plot.
     *
     * @param seconds time since the pump or valve was switched on, s; negative before
     * @param label a word or two
     */
    public record Mark(double seconds, String label) {}

    public Draw {
        marks = List.copyOf(marks);
    }

    Draw marked(double seconds, String label) {
        List<Mark> more = new ArrayList<>(marks);
        more.add(new Mark(seconds, label));
        return new Draw(orderId, started, ended, current, missing, fill, band, estimate, more);
    }

    Draw endedAt(Moment moment) {
        return new Draw(orderId, started, Optional.of(moment), current, missing, fill, band, estimate, marks);
    }

    /** Time the samples cover, s. */
    public double seconds() {
        return current.length() / 100.0;
    }
}
