package ouzel.app.screen;

import java.awt.Component;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;

/**
 * Repaints a component when it gains or loses the focus, so that its focus mark follows.
 *
 * @param component what is repainted
 */
record RepaintOnFocus(Component component) implements FocusListener {
    @Override
    public void focusGained(FocusEvent event) {
        component.repaint();
    }

    @Override
    public void focusLost(FocusEvent event) {
        component.repaint();
    }
}
