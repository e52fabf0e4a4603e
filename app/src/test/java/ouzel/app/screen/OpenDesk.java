package ouzel.app.screen;

import static org.awaitility.Awaitility.await;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import ouzel.app.desk.Act;
import ouzel.app.desk.DeskState;

/** A real desk window on a display, with a hand on the keyboard and one on the mouse. */
final class OpenDesk {
    private static final int MOST_TABS = 80;

    private final Robot robot;
    private final FakeFeed feed;
    private final List<PilotAsk> asks = new CopyOnWriteArrayList<>();
    private final List<Integer> keysDown = new ArrayList<>();
    private final AtomicInteger closings = new AtomicInteger();
    private DeskWindow window;

    /** A window on a desk that only shows {@code state} and takes note of what is done. */
    OpenDesk(DeskState state) throws AWTException, InterruptedException, InvocationTargetException {
        robot = new Robot();
        feed = new FakeFeed(state);
        open(feed, new NotedPilot());
    }

    /** A window on a desk that works. */
    OpenDesk(DeskFeed live, PilotFeed pilot) throws AWTException, InterruptedException, InvocationTargetException {
        robot = new Robot();
        feed = new FakeFeed(live.latest());
        open(live, pilot);
    }

    private void open(DeskFeed desk, PilotFeed pilot) throws InterruptedException, InvocationTargetException {
        SwingUtilities.invokeAndWait(() -> {
            LightLook.use();
            TitleFacts facts = new TitleFacts("Reed bed inlet", true);
            window = new DeskWindow(desk, Optional.of(pilot), facts, closings::incrementAndGet);
            window.open();
        });
        await().atMost(Duration.ofSeconds(15)).until(() -> window.frame().isFocused());
        settle();
    }

    /** Waits until the window manager has given the window its size and everything stands where it will stay. */
    private void settle() {
        AtomicReference<Rectangle> last = new AtomicReference<>();
        await().during(Duration.ofMillis(700)).atMost(Duration.ofSeconds(15)).until(() -> {
            Rectangle place = bounds();
            return place.equals(last.getAndSet(place));
        });
        robot.waitForIdle();
    }

    private Rectangle bounds() {
        Rectangle place = window.frame().getBounds();
        place.add(window.frame().getContentPane().getSize().width, 0);
        return place;
    }

    void show(DeskState state) {
        feed.show(state);
        int before = feed.looks();
        await().until(() -> feed.looks() > before + 1);
        robot.waitForIdle();
    }

    List<Act> acts() {
        return feed.acts();
    }

    List<PilotAsk> asks() {
        return asks;
    }

    int closings() {
        return closings.get();
    }

    DeskWindow window() {
        return window;
    }

    void keyDown(int key) {
        keysDown.add(key);
        robot.keyPress(key);
    }

    void keyUp(int key) {
        robot.keyRelease(key);
        keysDown.remove(Integer.valueOf(key));
    }

    void type(int... keys) {
        for (int key : keys) {
            keyDown(key);
            keyUp(key);
        }
        robot.waitForIdle();
    }

    /** Goes on with the tab key until {@code name} has the keyboard. */
    void tabTo(String name) {
        Component goal = find(name);
        for (int i = 0; i < MOST_TABS && !hasKeyboard(goal); i++) {
            type(KeyEvent.VK_TAB);
            robot.delay(30);
        }
        if (!hasKeyboard(goal)) {
            throw new AssertionError(name + " is not reached by the tab key");
        }
    }

    private static boolean hasKeyboard(Component goal) {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() == goal;
    }

    void mouseDown(String name) {
        pointAt(name);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    }

    void mouseUp() {
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.waitForIdle();
    }

    void click(String name) {
        mouseDown(name);
        mouseUp();
    }

    /** Writes what the display shows to {@code target/screenshots}. */
    void photograph(String name) throws IOException {
        robot.waitForIdle();
        Path folder = Files.createDirectories(Path.of("target", "screenshots"));
        Rectangle all = new Rectangle(Toolkit.getDefaultToolkit().getScreenSize());
        ImageIO.write(
                robot.createScreenCapture(all),
                "png",
                folder.resolve(name + ".png").toFile());
    }

    /** The component of this name, once it is on the screen. */
    Component find(String name) {
        return await().atMost(Duration.ofSeconds(10))
                .until(() -> found(window.frame(), name), Optional::isPresent)
                .orElseThrow();
    }

    private void pointAt(String name) {
        Component component = find(name);
        SwingUtilities.invokeLater(() -> ((JComponent) component)
                .scrollRectToVisible(new Rectangle(0, 0, component.getWidth(), component.getHeight())));
        robot.waitForIdle();
        Point corner = component.getLocationOnScreen();
        robot.mouseMove(corner.x + component.getWidth() / 2, corner.y + component.getHeight() / 2);
        robot.waitForIdle();
    }

    private static Optional<Component> found(Container within, String name) {
        for (Component child : within.getComponents()) {
            if (name.equals(child.getName()) && child.isShowing()) {
                return Optional.of(child);
            }
            if (child instanceof Container container) {
                Optional<Component> deeper = found(container, name);
                if (deeper.isPresent()) {
                    return deeper;
                }
            }
        }
        return Optional.empty();
    }

    /** Lets go of every key and of the mouse, or else the next test would find them pressed, and closes the window. */
    void close() throws InterruptedException, InvocationTargetException {
        List.copyOf(keysDown).forEach(this::keyUp);
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        SwingUtilities.invokeAndWait(window::close);
        robot.waitForIdle();
    }

    /** A pilot who only takes note. */
    private final class NotedPilot implements PilotFeed {
        @Override
        public void ask(PilotAsk ask) {
            asks.add(ask);
        }

        @Override
        public String says() {
            return "Hovering.";
        }
    }
}
