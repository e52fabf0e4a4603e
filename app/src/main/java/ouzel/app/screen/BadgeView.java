package ouzel.app.screen;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import ouzel.app.screen.model.LaneView;

/**
 * A sampler's state: shape, word and shade.
 *
 * <p>Thread: EDT.
 */
final class BadgeView extends JLabel {
    private LaneView.Badge shown;

    BadgeView() {
        setName("badge");
        setFont(LightLook.font(1.2f, true));
        setIconTextGap(8);
        setBorder(BorderFactory.createEmptyBorder(2, 8, 2, 9));
    }

    void render(LaneView.Badge badge) {
        if (badge.equals(shown)) {
            return;
        }
        shown = badge;
        setIcon(SignIcon.of(badge.shape(), 16));
        setText(badge.detail().isEmpty() ? badge.word() : badge.word() + "  " + badge.detail());
        setBackground(LightLook.background(badge.attention()));
        setForeground(LightLook.foreground(badge.attention()));
        getAccessibleContext().setAccessibleName("State: " + getText());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setColor(getBackground());
        int arc = UIScale.scale(8);
        pen.fillRoundRect(0, 0, getWidth(), getHeight(), arc, arc);
        pen.dispose();
        super.paintComponent(graphics);
    }
}
