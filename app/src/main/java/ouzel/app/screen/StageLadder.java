package ouzel.app.screen;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import ouzel.app.screen.model.OrderLine;

/**
 * How far an order came: a rail with one stop for each stage, its word and its time below.
 *
 * <p>Thread: EDT.
 */
final class StageLadder extends JComponent {
    private final Font plain = LightLook.font(0.86f, false);
    private final Font bold = LightLook.font(0.86f, true);
    private OrderLine shown = new OrderLine("", List.of(), "", ouzel.app.screen.model.Attention.CALM);

    StageLadder() {
        setOpaque(false);
    }

    void render(OrderLine line) {
        if (line.equals(shown)) {
            return;
        }
        shown = line;
        setToolTipText(spoken());
        getAccessibleContext().setAccessibleName(spoken());
        repaint();
    }

    private String spoken() {
        return shown.name() + ": "
                + shown.stages().stream()
                        .filter(stage -> stage.reach() != OrderLine.Reach.AHEAD)
                        .map(stage -> stage.word() + " " + stage.time())
                        .collect(Collectors.joining(", "));
    }

    @Override
    public javax.accessibility.AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {};
        }
        return accessibleContext;
    }

    @Override
    public Dimension getPreferredSize() {
        FontMetrics metrics = getFontMetrics(plain);
        return new Dimension(UIScale.scale(280), 2 * metrics.getHeight() + UIScale.scale(14));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(UIScale.scale(120), getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        int count = shown.stages().size();
        double step = (double) getWidth() / Math.max(3, count);
        double rail = UIScale.scale(7f);
        for (int i = 0; i + 1 < count; i++) {
            pen.setColor(color(shown.stages().get(i + 1)));
            pen.setStroke(new BasicStroke(UIScale.scale(2f)));
            pen.draw(new Line2D.Double(step * i + UIScale.scale(10f), rail, step * (i + 1), rail));
        }
        for (int i = 0; i < count; i++) {
            paintStage(pen, shown.stages().get(i), step * i, i + 1 < count ? step : getWidth() - step * i);
        }
        pen.dispose();
    }

    private void paintStage(Graphics2D pen, OrderLine.Stage stage, double x, double width) {
        double size = UIScale.scale(9f);
        double top = UIScale.scale(2.5f);
        pen.setColor(color(stage));
        switch (stage.reach()) {
            case REACHED -> pen.fill(new Ellipse2D.Double(x, top, size, size));
            case AHEAD -> {
                pen.setStroke(new BasicStroke(UIScale.scale(1.4f)));
                pen.draw(new Ellipse2D.Double(x + 0.7, top + 0.7, size - 1.4, size - 1.4));
            }
            case BAD -> {
                pen.setStroke(new BasicStroke(UIScale.scale(2.4f)));
                pen.draw(new Line2D.Double(x, top, x + size, top + size));
                pen.draw(new Line2D.Double(x + size, top, x, top + size));
            }
        }
        pen.setFont(stage.reach() == OrderLine.Reach.AHEAD ? plain : bold);
        FontMetrics metrics = pen.getFontMetrics();
        float line = UIScale.scale(14f) + metrics.getAscent();
        pen.drawString(stage.word(), (float) x, line);
        pen.setFont(plain);
        pen.drawString(stage.time(), (float) x, line + metrics.getHeight());
    }

    private static Color color(OrderLine.Stage stage) {
        return switch (stage.reach()) {
            case REACHED -> LightLook.foreground("lane");
            case AHEAD -> LightLook.foreground("quiet");
            case BAD -> LightLook.foreground("alarmText");
        };
    }
}
