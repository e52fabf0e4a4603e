package ouzel.app.screen;

import java.awt.Component;
import java.awt.KeyEventDispatcher;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.util.Optional;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import ouzel.app.screen.model.DeskIntents;
import ouzel.app.screen.model.PressedKeys;
import ouzel.protocol.message.Sampler;

/**
 * Keys of the whole desk, whatever has the focus.
 *
 * <p>Esc is safe-all everywhere, in text fields and dialogs too. Function keys work all over the desk's own window;
 * letters, digits and Space only where nobody is writing. Space belongs to the trigger alone and never presses a
 * focused button; Enter does that.
 *
 * <p>Thread: EDT.
 */
final class KeyRouter implements KeyEventDispatcher {
    private final Window window;
    private final DeskPanel desk;
    private final DeskIntents intents;
    private final Optional<PilotFeed> pilot;
    private final PressedKeys keys = new PressedKeys();

    KeyRouter(Window window, DeskPanel desk, DeskIntents intents, Optional<PilotFeed> pilot) {
        this.window = window;
        this.desk = desk;
        this.intents = intents;
        this.pilot = pilot;
    }

    @Override
    public boolean dispatchKeyEvent(KeyEvent event) {
        if (!belongs(event.getComponent())) {
            return false;
        }
        if (event.getID() == KeyEvent.KEY_TYPED) {
            return isTrigger(event) && event.getKeyChar() == ' ';
        }
        boolean down = event.getID() == KeyEvent.KEY_PRESSED;
        long now = EventTime.nanos(event);
        boolean fresh = down && keys.press(event.getKeyCode(), now);
        if (!down) {
            keys.release(event.getKeyCode(), now);
        }
        if (event.getKeyCode() == KeyEvent.VK_ESCAPE) {
            return escape(event, fresh);
        }
        if (event.getKeyCode() == KeyEvent.VK_SPACE && isTrigger(event)) {
            hold(down, now);
            return true;
        }
        return isInDesk(event) && isPlain(event) && act(event, fresh);
    }

    /** Keys are no longer ours: what was down may come up unseen. */
    void forget() {
        keys.forget();
    }

    private boolean belongs(Component component) {
        Window at = component instanceof Window itself ? itself : SwingUtilities.getWindowAncestor(component);
        for (Window owner = at; owner != null; owner = owner.getOwner()) {
            if (owner == window) {
                return true;
            }
        }
        return false;
    }

    /** In the desk's window Esc ends here; a dialog may use it to close itself as well. */
    private boolean escape(KeyEvent event, boolean fresh) {
        if (fresh) {
            intents.safeAllPressed();
            desk.closeStrips();
        }
        return isInDesk(event);
    }

    private void hold(boolean down, long now) {
        if (down) {
            intents.holdPressed(now);
        } else {
            intents.holdReleased(now);
        }
    }

    /** Runs what the key means when it was freshly pressed; true if the key means something here. */
    private boolean act(KeyEvent event, boolean fresh) {
        Optional<Runnable> meaning = meaning(event.getKeyCode(), isWriting(event.getComponent()));
        meaning.filter(known -> fresh).ifPresent(Runnable::run);
        return meaning.isPresent();
    }

    private Optional<Runnable> meaning(int key, boolean writing) {
        return switch (key) {
            case KeyEvent.VK_F1 -> Optional.of(desk::toggleKeyHelp);
            case KeyEvent.VK_F2 -> ask(PilotAsk.HOVER);
            case KeyEvent.VK_F3 -> ask(PilotAsk.SET_DOWN_ON_WATER);
            case KeyEvent.VK_F4 -> ask(PilotAsk.SET_DOWN_ON_GROUND);
            default -> writing ? Optional.empty() : letter(key);
        };
    }

    private Optional<Runnable> letter(int key) {
        return switch (key) {
            case KeyEvent.VK_1, KeyEvent.VK_NUMPAD1 -> Optional.of(() -> intents.armPressed(Sampler.WATER));
            case KeyEvent.VK_2, KeyEvent.VK_NUMPAD2 -> Optional.of(() -> intents.armPressed(Sampler.AIR));
            case KeyEvent.VK_3, KeyEvent.VK_NUMPAD3 -> Optional.of(() -> intents.armPressed(Sampler.SOIL));
            case KeyEvent.VK_X -> Optional.of(intents::stopPressed);
            case KeyEvent.VK_R ->
                Optional.of(() -> desk.lane(intents.selected()).askReload());
            default -> Optional.empty();
        };
    }

    private Optional<Runnable> ask(PilotAsk ask) {
        return pilot.map(feed -> () -> feed.ask(ask));
    }

    private boolean isTrigger(KeyEvent event) {
        return isInDesk(event) && !isWriting(event.getComponent());
    }

    private boolean isInDesk(KeyEvent event) {
        Component component = event.getComponent();
        return component == window || SwingUtilities.getWindowAncestor(component) == window;
    }

    private static boolean isPlain(KeyEvent event) {
        return !event.isControlDown() && !event.isAltDown() && !event.isMetaDown();
    }

    private static boolean isWriting(Component component) {
        return component instanceof JTextComponent text && text.isEditable() && text.isEnabled();
    }
}
