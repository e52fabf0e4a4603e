package ouzel.app.screen;

import javax.swing.AbstractButton;
import javax.swing.event.ChangeEvent;
import javax.swing.event.ChangeListener;

/**
 * Lets a button act when it goes down instead of when it comes up, by mouse, key or assistive technology alike.
 *
 * <p>Thread: EDT.
 */
final class PressDown implements ChangeListener {
    private final AbstractButton button;
    private final Runnable act;
    private boolean down;

    private PressDown(AbstractButton button, Runnable act) {
        this.button = button;
        this.act = act;
    }

    static void actsOn(AbstractButton button, Runnable act) {
        button.getModel().addChangeListener(new PressDown(button, act));
    }

    @Override
    public void stateChanged(ChangeEvent event) {
        boolean pressed = button.getModel().isPressed();
        if (pressed && !down) {
            act.run();
        }
        down = pressed;
    }
}
