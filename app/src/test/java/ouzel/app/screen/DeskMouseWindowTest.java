package ouzel.app.screen;

import static java.awt.event.KeyEvent.VK_ENTER;
import static java.awt.event.KeyEvent.VK_ESCAPE;
import static java.awt.event.KeyEvent.VK_J;
import static java.awt.event.KeyEvent.VK_O;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.event.WindowEvent;
import java.time.Duration;
import javax.swing.JDialog;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import ouzel.app.desk.Act;
import ouzel.app.desk.Condition;
import ouzel.app.desk.DeskState;
import ouzel.app.screen.model.CraftedDesk;
import ouzel.app.testing.Needs;
import ouzel.protocol.message.Sampler;

/** Real clicks in a real window, and what happens when it is closed. */
class DeskMouseWindowTest {
    private OpenDesk desk;

    @BeforeEach
    void open() throws Exception {
        Needs.display();
        desk = new OpenDesk(CraftedDesk.afloat().state());
    }

    @AfterEach
    void close() throws Exception {
        if (desk != null) {
            desk.close();
        }
    }

    @Test
    void safeAllActsWhenItGoesDown() {
        desk.mouseDown("safeAll");
        comes(new Act.SafeAll());
        desk.mouseUp();

        assertThat(desk.acts()).containsExactly(new Act.SafeAll());
    }

    @Test
    void theTriggerIsHeldWithTheMouseToo() {
        desk.show(armed());
        desk.mouseDown("hold WATER");
        comes(new Act.Trigger(Sampler.WATER));
        desk.mouseUp();

        assertThat(desk.acts()).containsExactly(new Act.Trigger(Sampler.WATER));
    }

    @Test
    void aClickOnTheTriggerDoesNothing() {
        desk.show(armed());
        desk.click("hold WATER");

        await().during(Duration.ofMillis(1_500)).atMost(Duration.ofSeconds(6)).until(desk.acts()::isEmpty);
    }

    @Test
    void confirmingAsksWhoSaysSo() {
        desk.click("confirm " + Condition.PEOPLE_CLEAR);
        desk.find("name");
        desk.type(VK_J, VK_O, VK_ENTER);

        comes(new Act.Attest(Condition.PEOPLE_CLEAR, "jo"));
    }

    @Test
    void anIdleDeskClosesUnasked() {
        askToClose();

        await().until(() -> desk.closings() == 1);
    }

    @Test
    void aDeskWithSomethingArmedStaysUnlessToldOtherwise() {
        desk.show(armed());
        askToClose();
        await().atMost(Duration.ofSeconds(10)).until(() -> dialog().isFocused());

        desk.type(VK_ESCAPE);
        comes(new Act.SafeAll());
        await().until(() -> !dialog().isVisible());
        assertThat(desk.closings()).isZero();
    }

    private void askToClose() {
        SwingUtilities.invokeLater(() -> desk.window()
                .frame()
                .dispatchEvent(new WindowEvent(desk.window().frame(), WindowEvent.WINDOW_CLOSING)));
        await().until(() -> desk.closings() == 1
                || KeyboardFocusManager.getCurrentKeyboardFocusManager().getActiveWindow() instanceof JDialog);
    }

    private static JDialog dialog() {
        for (Window window : Window.getWindows()) {
            if (window instanceof JDialog dialog && dialog.isModal() && dialog.isDisplayable()) {
                return dialog;
            }
        }
        return new JDialog();
    }

    private static DeskState armed() {
        return CraftedDesk.afloat().armed(Sampler.WATER).state();
    }

    private void comes(Act act) {
        await().atMost(Duration.ofSeconds(5)).until(() -> desk.acts().contains(act));
    }
}
