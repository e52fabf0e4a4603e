package ouzel.app.command;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.util.function.BooleanSupplier;
import ouzel.app.exit.ExitCode;
import ouzel.app.exit.Refusal;

/** Makes sure that there is a display before anything is set going that needs one. */
final class Screens {
    private final BooleanSupplier present;

    Screens(BooleanSupplier present) {
        this.present = present;
    }

    /** Asks the system. */
    static Screens ofSystem() {
        return new Screens(Screens::isPresent);
    }

    /**
     * Goes on only where a window can be opened.
     *
     * @param instead the command that does the same without one
     * @throws Refusal if there is no display
     */
    void require(String instead) throws Refusal {
        if (!present.getAsBoolean()) {
            throw new Refusal(ExitCode.NO_DISPLAY, "There is no display for a window here; without one: " + instead);
        }
    }

    private static boolean isPresent() {
        try {
            return !GraphicsEnvironment.isHeadless()
                    && GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (HeadlessException | AWTError | LinkageError none) {
            // A display is named but does not answer, or this Java came without the parts for windows.
            return false;
        }
    }
}
