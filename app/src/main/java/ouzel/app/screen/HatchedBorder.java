package ouzel.app.screen;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.RenderingHints;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import javax.swing.border.AbstractBorder;

/**
 * A hatched frame that no live desk has: with it a rehearsal cannot be mistaken.
 *
 * <p>Thread: EDT.
 */
final class HatchedBorder extends AbstractBorder {
    private static final int WIDTH = 8;
    private final Color color;

    HatchedBorder(Color color) {
        this.color = color;
    }

    @Override
    public Insets getBorderInsets(Component component, Insets insets) {
        int width = UIScale.scale(WIDTH);
        insets.set(width, width, width, width);
        return insets;
    }

    @Override
    public void paintBorder(Component component, Graphics graphics, int x, int y, int width, int height) {
        int thick = UIScale.scale(WIDTH);
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        Area frame = new Area(new Rectangle2D.Double(x, y, width, height));
        frame.subtract(
                new Area(new Rectangle2D.Double(x + thick, y + thick, width - 2.0 * thick, height - 2.0 * thick)));
        pen.clip(frame);
        pen.setColor(Color.WHITE);
        pen.fillRect(x, y, width, height);
        pen.setColor(color);
        pen.setStroke(new BasicStroke(thick * 0.75f));
        for (double start = x - height; start < x + width; start += thick * 2.0) {
            pen.draw(new Line2D.Double(start, y + height, start + height, y));
        }
        pen.dispose();
    }
}
