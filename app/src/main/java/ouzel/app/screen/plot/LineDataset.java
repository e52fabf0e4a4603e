package ouzel.app.screen.plot;

import org.jfree.data.general.DatasetChangeEvent;
import org.jfree.data.xy.AbstractIntervalXYDataset;
import ouzel.app.screen.model.Columns;

/**
 * One line with an optional band about it, replaced as a whole; tells its chart once for each replacement.
 *
 * <p>Thread: EDT.
 */
final class LineDataset extends AbstractIntervalXYDataset {
    private final String name;
    private transient Columns line = Columns.NONE;
    private transient Columns band = Columns.NONE;

    LineDataset(String name) {
        this.name = name;
    }

    void replace(Columns nextLine, Columns nextBand) {
        line = nextLine;
        band = nextBand;
        notifyListeners(new DatasetChangeEvent(this, this));
    }

    @Override
    public int getSeriesCount() {
        return 1;
    }

    @Override
    public Comparable<?> getSeriesKey(int series) {
        return name;
    }

    @Override
    public int getItemCount(int series) {
        return line.count();
    }

    @Override
    public double getXValue(int series, int item) {
        return line.seconds(item);
    }

    @Override
    public double getYValue(int series, int item) {
        return line.value(item);
    }

    @Override
    public double getStartYValue(int series, int item) {
        return Math.max(0, getYValue(series, item) - halfWidth(item));
    }

    @Override
    public double getEndYValue(int series, int item) {
        return getYValue(series, item) + halfWidth(item);
    }

    @Override
    public double getStartXValue(int series, int item) {
        return getXValue(series, item);
    }

    @Override
    public double getEndXValue(int series, int item) {
        return getXValue(series, item);
    }

    @Override
    public Number getX(int series, int item) {
        return getXValue(series, item);
    }

    @Override
    public Number getY(int series, int item) {
        return getYValue(series, item);
    }

    @Override
    public Number getStartX(int series, int item) {
        return getStartXValue(series, item);
    }

    @Override
    public Number getEndX(int series, int item) {
        return getEndXValue(series, item);
    }

    @Override
    public Number getStartY(int series, int item) {
        return getStartYValue(series, item);
    }

    @Override
    public Number getEndY(int series, int item) {
        return getEndYValue(series, item);
    }

    private double halfWidth(int item) {
        return item < band.count() ? band.value(item) : 0;
    }
}
