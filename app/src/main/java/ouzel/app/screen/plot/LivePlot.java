package ouzel.app.screen.plot;

import com.formdev.flatlaf.util.UIScale;
import java.awt.AlphaComposite;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.List;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import ouzel.app.desk.Draw;
import ouzel.app.screen.model.Columns;
import ouzel.app.screen.model.PlotView;

/**
 * One live plot: measured current, for a pump with the estimated fill and its band on a second axis, and marks.
 *
 * <p>What is shown and what is drawn are two things: {@link #show} only takes note, {@link #redraw} gives the chart new
 * points if there are any. No tool tips, no chart entities, no zoom: a plot that may be moved by accident lies.
 *
 * <p>Thread: EDT.
 */
public final class LivePlot extends ChartPanel {
    private static final int TICKS = 4;
    private static final int LOW_FOR_TICKS = 110;
    private static final int LOW = 60;
    private static final int HIGH = 96;
    private static final int MARK_LINES = 3;
    private static final float WATERMARK_OPACITY = 0.16f;

    private final NumberAxis time;
    private final NumberAxis currentAxis = ChartLook.axis("mA", "plotCurrent");
    private final NumberAxis fillAxis = ChartLook.axis("mL", "plotFill");
    private final LineDataset current = new LineDataset("current");
    private final LineDataset fill = new LineDataset("fill");
    private final XYPlot plot;
    private final boolean pumped;
    private final String mark;
    private PlotView next;
    private PlotView drawn;
    private int drawnColumns;
    private int drawnHeight;
    private List<Draw.Mark> drawnMarks = List.of();

    /**
     * @param pumped true for a pump's current over seconds, false for a valve's over milliseconds
     * @param mark what is said across the plot; empty for a live flight
     */
    public LivePlot(boolean pumped, String mark) {
        this(pumped, mark, new XYPlot());
    }

    private LivePlot(boolean pumped, String mark, XYPlot plot) {
        super(ChartLook.chart(plot), 300, 140, 60, 40, 10_000, 10_000, true, false, false, false, false, false);
        this.plot = plot;
        this.pumped = pumped;
        this.mark = mark;
        this.time = ChartLook.axis(pumped ? "s since the pump went on" : "ms since the valve went on", "plot");
        buildPlot();
        setDomainZoomable(false);
        setRangeZoomable(false);
        setPopupMenu(null);
        setFocusable(false);
        getChartRenderingInfo().setEntityCollection(null);
        getAccessibleContext().setAccessibleName(pumped ? "Plot of pump current and fill" : "Plot of valve current");
    }

    private void buildPlot() {
        plot.setDomainAxis(time);
        plot.setRangeAxis(0, currentAxis);
        plot.setDataset(0, current);
        plot.setRenderer(0, ChartLook.line("plotCurrent"));
        if (pumped) {
            plot.setRangeAxis(1, fillAxis);
            plot.setDataset(1, fill);
            plot.mapDatasetToRangeAxis(1, 1);
            plot.setRenderer(1, ChartLook.band("plotFill"));
        }
        plot.setNoDataMessage(pumped ? "no draw yet" : "no stroke yet");
    }

    /** An empty plot gives its room to what stands in the way of the first draw. */
    @Override
    public Dimension getMinimumSize() {
        boolean isEmpty = drawn == null || drawn.current().length() == 0;
        return UIScale.scale(new Dimension(60, isEmpty ? LOW : HIGH));
    }

    /** Takes note of what should be drawn next. */
    public void show(PlotView view) {
        next = view;
    }

    /** Draws what was noted last, if it differs from what stands there; meant to be called ten times a second. */
    public void redraw() {
        int columns = Math.max(50, getWidth());
        if (next == null || (next.equals(drawn) && columns == drawnColumns && getHeight() == drawnHeight)) {
            return;
        }
        getChart().setNotify(false);
        drawAxes(next);
        drawMarks(next);
        current.replace(points(next, next.current(), 1, columns), Columns.NONE);
        Columns line = points(next, next.fill(), 10, columns);
        fill.replace(line, points(next, next.band(), 10, columns));
        boolean isFirst = drawn == null
                || (drawn.current().length() == 0) != (next.current().length() == 0);
        drawn = next;
        if (isFirst) {
            revalidate();
        }
        drawnColumns = columns;
        drawnHeight = getHeight();
        getChart().setNotify(true);
    }

    private Columns points(PlotView view, ouzel.app.estimate.Series series, double divisor, int columns) {
        return Columns.of(series, view.samplesPerSecond(), divisor, view.from(), view.to(), columns)
                .scaled(timeScale());
    }

    private double timeScale() {
        return pumped ? 1 : 1_000;
    }

    private void drawAxes(PlotView view) {
        ChartLook.span(time, view.from() * timeScale(), view.to() * timeScale(), TICKS);
        int upwards = getHeight() < UIScale.scale(LOW_FOR_TICKS) ? 1 : TICKS;
        ChartLook.span(currentAxis, 0, view.currentTop(), upwards);
        ChartLook.span(fillAxis, 0, view.fillTop(), upwards);
    }

    private void drawMarks(PlotView view) {
        if (drawn != null && view.marks().equals(drawnMarks) && view.to() == drawn.to()) {
            return;
        }
        drawnMarks = view.marks();
        plot.clearDomainMarkers();
        for (int i = 0; i < drawnMarks.size(); i++) {
            Draw.Mark mark = drawnMarks.get(i);
            plot.addDomainMarker(
                    ChartLook.mark(mark.seconds() * timeScale(), mark.label(), i % MARK_LINES, isLate(view, mark)));
        }
    }

    /** A label near the right end stands left of its mark, or else it would be cut. */
    private static boolean isLate(PlotView view, Draw.Mark mark) {
        return mark.seconds() - view.from() > 0.85 * (view.to() - view.from());
    }

    @Override
    public void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        if (!mark.isEmpty()) {
            pen.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, WATERMARK_OPACITY));
            pen.setColor(ChartLook.color("rehearsal.background"));
            paintAcross(pen, mark, Math.min(getHeight() / 3f, getWidth() / (float) mark.length()));
            pen.setComposite(AlphaComposite.SrcOver);
        }
        if (drawn != null && drawn.stale()) {
            pen.setColor(ChartLook.color("alarmText.foreground"));
            paintAcross(pen, "stale: nothing new", ChartLook.font(1.1f).getSize2D());
        }
        if (drawn != null) {
            pen.setColor(ChartLook.color("plot.foreground"));
            pen.setFont(ChartLook.font(0.8f));
            int width = pen.getFontMetrics().stringWidth(drawn.note());
            pen.drawString(drawn.note(), getWidth() - width - UIScale.scale(4), getHeight() - UIScale.scale(3));
        }
        pen.dispose();
    }

    private void paintAcross(Graphics2D pen, String words, float size) {
        pen.setFont(ChartLook.font(1).deriveFont(Font.BOLD, size));
        int width = pen.getFontMetrics().stringWidth(words);
        pen.drawString(words, (getWidth() - width) / 2, (getHeight() + Math.round(size)) / 2 - Math.round(size / 2));
    }
}
