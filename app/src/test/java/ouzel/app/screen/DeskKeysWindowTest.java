package ouzel.app.screen;

import static java.awt.event.KeyEvent.VK_1;
import static java.awt.event.KeyEvent.VK_2;
import static java.awt.event.KeyEvent.VK_A;
import static java.awt.event.KeyEvent.VK_ENTER;
import static java.awt.event.KeyEvent.VK_ESCAPE;
import static java.awt.event.KeyEvent.VK_F3;
import static java.awt.event.KeyEvent.VK_R;
import static java.awt.event.KeyEvent.VK_SPACE;
import static java.awt.event.KeyEvent.VK_X;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.util.function.BooleanSupplier;
import javax.swing.JFrame;
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
import ouzel.protocol.message.SamplerState;

/** Real keys in a real window. */
class DeskKeysWindowTest {
    private static final Duration LONG_ENOUGH = Duration.ofMillis(1_800);

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
    void aKeyArmsOnceHoweverLongItIsHeld() {
        desk.keyDown(VK_1);
        stays(() -> desk.acts().size() <= 1);
        desk.keyUp(VK_1);

        assertThat(desk.acts()).containsExactly(new Act.Arm(Sampler.WATER));
    }

    @Test
    void spaceHeldLongTriggersExactlyOnceThoughTheKeyRepeats() {
        desk.show(armed());
        desk.keyDown(VK_SPACE);
        comes(new Act.Trigger(Sampler.WATER));
        stays(() -> desk.acts().size() == 1);
        desk.keyUp(VK_SPACE);

        assertThat(desk.acts()).containsExactly(new Act.Trigger(Sampler.WATER));
    }

    @Test
    void spaceLetGoEarlyDoesNothing() {
        desk.show(armed());
        desk.keyDown(VK_SPACE);
        after(Duration.ofMillis(400));
        desk.keyUp(VK_SPACE);

        stays(() -> desk.acts().isEmpty());
    }

    @Test
    void aWindowThatTakesTheKeyboardBreaksTheHold() throws Exception {
        desk.show(armed());
        desk.keyDown(VK_SPACE);
        after(Duration.ofMillis(300));
        JFrame other = another();

        stays(() -> desk.acts().isEmpty());
        SwingUtilities.invokeAndWait(other::dispose);
    }

    @Test
    void escapeIsSafeAllOnceHoweverLongItIsHeld() {
        desk.keyDown(VK_ESCAPE);
        stays(() -> desk.acts().size() <= 1);

        assertThat(desk.acts()).containsExactly(new Act.SafeAll());
    }

    @Test
    void escapeIsSafeAllWhileANameIsTyped() {
        desk.click("confirm " + Condition.PEOPLE_CLEAR);
        desk.find("name");
        desk.type(VK_A, VK_ESCAPE);

        comes(new Act.SafeAll());
        assertThat(desk.acts()).containsExactly(new Act.SafeAll());
    }

    @Test
    void lettersAndSpaceInAFieldAreOnlyText() {
        desk.show(armed());
        desk.click("confirm " + Condition.PEOPLE_CLEAR);
        desk.find("name");
        desk.type(VK_X, VK_1, VK_R, VK_2);
        desk.keyDown(VK_SPACE);

        stays(() -> desk.acts().isEmpty());
    }

    @Test
    void xStopsWhatIsArmed() {
        desk.show(armed());
        desk.type(VK_X);

        comes(new Act.Stop(Sampler.WATER));
    }

    @Test
    void reloadNeedsASecondStep() {
        desk.show(CraftedDesk.afloat()
                .turned(Sampler.WATER, SamplerState.SPENT)
                .pass(200)
                .state());
        desk.type(VK_1, VK_R);
        desk.find("yes");
        assertThat(desk.acts()).isEmpty();

        desk.type(VK_ENTER);
        comes(new Act.Reload(Sampler.WATER));
    }

    @Test
    void spaceNeverPressesAFocusedButton() throws Exception {
        SwingUtilities.invokeAndWait(() -> desk.find("safeAll").requestFocusInWindow());
        await().until(() -> desk.find("safeAll").isFocusOwner());
        desk.type(VK_SPACE);
        stays(() -> desk.acts().isEmpty());

        desk.type(VK_ENTER);
        comes(new Act.SafeAll());
    }

    @Test
    void functionKeysAskThePilot() {
        desk.type(VK_F3);

        await().until(() -> desk.asks().contains(PilotAsk.SET_DOWN_ON_WATER));
    }

    private static DeskState armed() {
        return CraftedDesk.afloat().armed(Sampler.WATER).state();
    }

    private static JFrame another() throws Exception {
        JFrame[] other = new JFrame[1];
        SwingUtilities.invokeAndWait(() -> {
            other[0] = new JFrame("another window");
            other[0].setSize(300, 200);
            other[0].setVisible(true);
            other[0].toFront();
        });
        await().atMost(Duration.ofSeconds(5)).until(() -> other[0].isFocused());
        return other[0];
    }

    private void comes(Act act) {
        await().atMost(Duration.ofSeconds(5)).until(() -> desk.acts().contains(act));
    }

    private static void stays(BooleanSupplier statement) {
        await().during(LONG_ENOUGH).atMost(Duration.ofSeconds(6)).until(statement::getAsBoolean);
    }

    private static void after(Duration time) {
        await().pollDelay(time).until(() -> true);
    }
}
