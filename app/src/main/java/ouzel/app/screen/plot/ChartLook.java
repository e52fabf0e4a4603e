package ouzel.app.screen.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import javax.swing.UIManager;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.LengthAdjustmentType;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;

/** Gives charts the colours and fonts of the installed look instead of their own. */
final class ChartLook {
    private static final float BAND_OPACITY = 0.22f;

    private ChartLook() {}

    static Color color(String key) {
        return UIManager.getColor("Ouzel." + key);
    }

    static Font font(float scale) {
        Font base = UIManager.getFont("defaultFont");
        return base.deriveFont(Font.PLAIN, Math.round(base.getSize2D() * scale));
    }

    static NumberAxis axis(String label, String role) {
        NumberAxis axis = new NumberAxis(label);
        axis.setAutoRange(false);
        axis.setLabelFont(font(0.8f));
        axis.setTickLabelFont(font(0.8f));
        axis.setLabelPaint(color(role + ".foreground"));
        axis.setTickLabelPaint(color(role + ".foreground"));
        axis.setAxisLinePaint(color("edge"));
        axis.setTickMarkPaint(color("edge"));
        axis.setLabelInsets(new RectangleInsets(1, 2, 1, 2));
        axis.setNumberFormatOverride(new DecimalFormat("0.#", DecimalFormatSymbols.getInstance(Locale.ROOT)));
        return axis;
    }

    /** Sets the ends of an axis, and at least {@code fewestTicks} ticks at one, two or five times a power of ten. */
    static void span(NumberAxis axis, double from, double to, int fewestTicks) {
        double step = Math.pow(10, Math.floor(Math.log10((to - from) / fewestTicks)));
        double most = (to - from) / fewestTicks / step;
        axis.setTickUnit(new NumberTickUnit(step * (most >= 5 ? 5 : most >= 2 ? 2 : 1)), false, true);
        axis.setRange(from, to);
    }

    static JFreeChart chart(XYPlot plot) {
        plot.setBackgroundPaint(color("plot.background"));
        plot.setOutlinePaint(color("edge"));
        plot.setDomainGridlinePaint(color("plotGrid"));
        plot.setRangeGridlinePaint(color("plotGrid"));
        plot.setDomainGridlineStroke(new BasicStroke(1));
        plot.setRangeGridlineStroke(new BasicStroke(1));
        plot.setInsets(new RectangleInsets(7, 0, 0, 14));
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setNoDataMessageFont(font(0.93f));
        plot.setNoDataMessagePaint(color("plot.foreground"));
        JFreeChart chart = new JFreeChart(null, JFreeChart.DEFAULT_TITLE_FONT, plot, false);
        chart.setBackgroundPaint(color("lane.background"));
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        return chart;
    }

    static XYLineAndShapeRenderer line(String role) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesPaint(0, color(role + ".foreground"));
        renderer.setSeriesStroke(0, new BasicStroke(1.2f));
        return renderer;
    }

    static DeviationRenderer band(String role) {
        DeviationRenderer renderer = new DeviationRenderer(true, false);
        renderer.setSeriesPaint(0, color(role + ".foreground"));
        renderer.setSeriesFillPaint(0, color(role + ".foreground"));
        renderer.setAlpha(BAND_OPACITY);
        renderer.setSeriesStroke(0, new BasicStroke(2f));
        return renderer;
    }

    static ValueMarker mark(double seconds, String label, int line, boolean labelLeft) {
        ValueMarker marker = new ValueMarker(seconds);
        marker.setPaint(color("plotMark.foreground"));
        marker.setStroke(new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 3}, 0));
        marker.setLabel(label);
        marker.setLabelFont(font(0.8f));
        marker.setLabelPaint(color("plotMark.foreground"));
        marker.setLabelBackgroundColor(new Color(0, 0, 0, 0));
        marker.setLabelAnchor(labelLeft ? RectangleAnchor.TOP_LEFT : RectangleAnchor.TOP_RIGHT);
        marker.setLabelTextAnchor(labelLeft ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_LEFT);
        marker.setLabelOffsetType(LengthAdjustmentType.CONTRACT);
        int height = font(0.8f).getSize() + 2;
        marker.setLabelOffset(new RectangleInsets(1 + (double) line * height, 3, 1, 3));
        return marker;
    }
}
