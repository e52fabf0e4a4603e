package ouzel.app.screen;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.GlyphVector;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import javax.swing.Icon;
import ouzel.app.screen.model.Attention;
import ouzel.app.screen.model.LadderView;
import ouzel.app.screen.model.LaneView;

/**
 * Signs that tell states apart by shape alone, painted in the colour of the component they stand on.
 *
 * @param mark the shape
 * @param size edge length before scaling, px
 */
record SignIcon(Mark mark, int size) implements Icon {
    /** The shapes. */
    enum Mark {
        /** Hollow square. */
        SQUARE,
        /** Filled triangle with a gap. */
        TRIANGLE,
        /** Filled arrow to the right. */
        ARROW,
        /** Tick. */
        TICK,
        /** Hollow circle with a bar. */
        BAR,
        /** Cross. */
        CROSS,
        /** Question mark. */
        QUESTION,
        /** Two arrows against each other. */
        AGAINST,
        /** Filled square: stop. */
        STOP
    }

    static SignIcon of(LaneView.Shape shape, int size) {
        return new SignIcon(
                switch (shape) {
                    case REST -> Mark.SQUARE;
                    case ARMED -> Mark.TRIANGLE;
                    case MOVING -> Mark.ARROW;
                    case DONE -> Mark.TICK;
                    case SPENT -> Mark.BAR;
                    case FAULT -> Mark.CROSS;
                    case UNKNOWN -> Mark.QUESTION;
                },
                size);
    }

    static SignIcon of(LadderView.Sign sign, int size) {
        return new SignIcon(
                switch (sign) {
                    case MET -> Mark.TICK;
                    case UNMET -> Mark.CROSS;
                    case UNKNOWN -> Mark.QUESTION;
                    case DISPUTED -> Mark.AGAINST;
                },
                size);
    }

    /** The sign of anything but calm; null, which Swing takes for no icon, while all is calm. */
    static Icon ofTrouble(Attention attention, int size) {
        return switch (attention) {
            case CALM -> null;
            case ACTIVE -> new SignIcon(Mark.ARROW, size);
            case NOTICE -> new SignIcon(Mark.TRIANGLE, size);
            case ALARM -> new SignIcon(Mark.CROSS, size);
        };
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(size);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(size);
    }

    @Override
    public void paintIcon(Component component, Graphics graphics, int x, int y) {
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.translate(x, y);
        pen.scale(UIScale.scale((float) size) / 16, UIScale.scale((float) size) / 16);
        pen.setStroke(new BasicStroke(2.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.setColor(component.isEnabled() ? component.getForeground() : Color.GRAY);
        paint(pen);
        pen.dispose();
    }

    /** Paints into a square of 16 by 16. */
    private void paint(Graphics2D pen) {
        switch (mark) {
            case SQUARE -> pen.draw(new Rectangle2D.Double(3, 3, 10, 10));
            case TRIANGLE -> pen.fill(path(true, 8, 1.5, 15.2, 14.5, 0.8, 14.5));
            case ARROW -> pen.fill(path(true, 2.5, 1.5, 14.5, 8, 2.5, 14.5));
            case TICK -> pen.draw(path(false, 2.5, 8.5, 6.5, 12.5, 13.5, 3.5));
            case BAR -> {
                pen.draw(new Ellipse2D.Double(2, 2, 12, 12));
                pen.draw(path(false, 4.5, 11.5, 11.5, 4.5));
            }
            case CROSS -> {
                pen.draw(path(false, 3, 3, 13, 13));
                pen.draw(path(false, 13, 3, 3, 13));
            }
            case QUESTION -> question(pen);
            case AGAINST -> {
                pen.fill(path(true, 0.5, 3, 7, 8, 0.5, 13));
                pen.fill(path(true, 15.5, 3, 9, 8, 15.5, 13));
            }
            case STOP -> pen.fill(new Rectangle2D.Double(2, 2, 12, 12));
        }
    }

    private static void question(Graphics2D pen) {
        Font font = new Font(Font.SANS_SERIF, Font.BOLD, 17);
        GlyphVector glyph = font.createGlyphVector(pen.getFontRenderContext(), "?");
        Rectangle2D bounds = glyph.getVisualBounds();
        pen.drawGlyphVector(glyph, (float) (8 - bounds.getCenterX()), (float) (8 - bounds.getCenterY()));
    }

    private static Path2D path(boolean closed, double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            path.lineTo(points[i], points[i + 1]);
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }
}
