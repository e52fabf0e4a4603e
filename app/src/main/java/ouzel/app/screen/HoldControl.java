package ouzel.app.screen;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.RoundRectangle2D;
import java.util.function.LongConsumer;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import ouzel.app.screen.model.DeskIntents.HoldView;

/**
 * The control that is held to trigger: a bar that fills while it is held, and words that say how far it is.
 *
 * <p>Thread: EDT.
 */
final class HoldControl extends JComponent {
    private final Font small = LightLook.font(0.86f, false);
    private HoldView shown = new HoldView(false, 0, "", "");

    HoldControl(LongConsumer pressed, LongConsumer released) {
        setFont(LightLook.font(1.0f, true));
        setFocusable(true);
        setOpaque(false);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                if (SwingUtilities.isLeftMouseButton(event) && shown.enabled()) {
                    requestFocusInWindow();
                    pressed.accept(EventTime.nanos(event));
                }
            }

            @Override
            public void mouseReleased(MouseEvent event) {
                released.accept(EventTime.nanos(event));
            }

            @Override
            public void mouseExited(MouseEvent event) {
                released.accept(EventTime.nanos(event));
            }
        });
        addFocusListener(new RepaintOnFocus(this));
    }

    void render(HoldView view) {
        if (view.equals(shown)) {
            return;
        }
        shown = view;
        setEnabled(view.enabled());
        getAccessibleContext().setAccessibleName("Trigger. " + view.text() + " " + view.note());
        repaint();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.PUSH_BUTTON;
                }
            };
        }
        return accessibleContext;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(UIScale.scale(180), UIScale.scale(48));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        double edge = UIScale.scale(2f);
        RoundRectangle2D box = new RoundRectangle2D.Double(
                edge, edge, getWidth() - 2 * edge, getHeight() - 2 * edge, UIScale.scale(6f), UIScale.scale(6f));
        pen.setColor(shown.enabled() ? LightLook.background("hold") : LightLook.background("calm"));
        pen.fill(box);
        paintFilling(pen, box);
        pen.setColor(LightLook.foreground(shown.enabled() ? "hold" : "quiet"));
        pen.setStroke(new BasicStroke(UIScale.scale(isFocusOwner() ? 3f : shown.enabled() ? 2f : 1f)));
        pen.draw(box);
        paintWords(pen);
        pen.dispose();
    }

    private void paintFilling(Graphics2D pen, RoundRectangle2D box) {
        Graphics2D filling = (Graphics2D) pen.create();
        filling.clip(box);
        filling.setColor(LightLook.background("holdFilled"));
        filling.fillRect(0, 0, (int) Math.round(getWidth() * shown.fraction()), getHeight());
        filling.dispose();
    }

    private void paintWords(Graphics2D pen) {
        pen.setColor(LightLook.foreground(shown.enabled() ? "hold" : "quiet"));
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        FontMetrics text = getFontMetrics(getFont());
        FontMetrics note = getFontMetrics(small);
        int height = text.getHeight() + (shown.note().isEmpty() ? 0 : note.getHeight());
        int top = (getHeight() - height) / 2;
        paintLine(pen, shown.text(), text, top + text.getAscent());
        paintLine(pen, shown.note(), note, top + text.getHeight() + note.getAscent());
    }

    private void paintLine(Graphics2D pen, String words, FontMetrics metrics, int baseline) {
        pen.setFont(metrics.getFont());
        pen.drawString(words, Math.max(UIScale.scale(6), (getWidth() - metrics.stringWidth(words)) / 2), baseline);
    }
}
