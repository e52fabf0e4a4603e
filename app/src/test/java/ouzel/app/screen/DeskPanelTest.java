package ouzel.app.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.JScrollBar;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicArrowButton;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import ouzel.app.desk.Conditions;
import ouzel.app.screen.model.DeskIntents;
import ouzel.app.screen.model.DeskPresenter;
import ouzel.app.screen.model.DeskView;

/** Paints the whole desk without a display, at the smallest and at a common size, and looks for anything cut. */
class DeskPanelTest {
    private static final File SCREENSHOTS = new File("target/screenshots");
    private static final int TARGET = 44;

    /** Height of a window's title bar that the desk does not get, px. */
    private static final int TITLE_BAR = 27;

    private DeskPanel panel;

    static Stream<Arguments> everySceneAtTwoSizes() {
        return Stream.of(Scene.values())
                .flatMap(
                        scene -> Stream.of(Arguments.of(scene, 1_366, 768, 14), Arguments.of(scene, 1_920, 1_080, 17)));
    }

    @ParameterizedTest
    @MethodSource("everySceneAtTwoSizes")
    void nothingIsCutAndEveryTargetIsLargeEnough(Scene scene, int width, int height, int font) throws Exception {
        BufferedImage image = painted(scene, width, height - TITLE_BAR, font);
        save(image, scene, width);

        List<String> faults = new ArrayList<>();
        look(panel, faults);
        assertThat(faults).isEmpty();
        assertThat(shades(image)).isGreaterThan(20);
    }

    private BufferedImage painted(Scene scene, int width, int height, int font)
            throws InterruptedException, InvocationTargetException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        SwingUtilities.invokeAndWait(() -> build(scene, width, height, font));
        for (int pass = 0; pass < 3; pass++) {
            // Words that wrap ask for another layout once they know their width.
            SwingUtilities.invokeAndWait(() -> layOut(panel));
        }
        SwingUtilities.invokeAndWait(() -> {
            panel.redrawPlots();
            layOut(panel);
            panel.paint(image.getGraphics());
        });
        return image;
    }

    private void build(Scene scene, int width, int height, int font) {
        LightLook.use(font);
        DeskIntents intents = new DeskIntents(act -> {});
        panel = new DeskPanel("REHEARSAL", Optional.of(new QuietPilot()), intents, ZoneOffset.UTC);
        var state = scene.desk().state();
        DeskView view = new DeskPresenter(Conditions::rows, ZoneOffset.UTC).view(state, 0);
        intents.show(view);
        panel.setSize(width, height);
        panel.render(view, state.notes());
        panel.renderTime(0);
    }

    /** What a window does when it is validated. */
    private static void layOut(Container container) {
        container.invalidate();
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                layOut(inner);
            }
        }
    }

    private static void look(Container parent, List<String> faults) {
        for (Component child : parent.getComponents()) {
            if (!child.isVisible()) {
                continue;
            }
            if (!(parent instanceof JViewport) && !isInside(parent, child)) {
                faults.add(
                        name(child) + " reaches out of its parent: " + child.getBounds() + " in " + parent.getSize());
            }
            if (isWritten(child) && child.getWidth() < child.getPreferredSize().width) {
                faults.add(name(child) + " is cut: " + child.getWidth() + " of " + child.getPreferredSize().width);
            }
            if (isTarget(child) && (child.getHeight() < TARGET || child.getWidth() < TARGET)) {
                faults.add(name(child) + " is too small a target: " + child.getSize());
            }
            if (child instanceof Container container) {
                look(container, faults);
            }
        }
    }

    private static boolean isInside(Container parent, Component child) {
        return isPartOfScrollBar(child)
                || child.getWidth() == 0
                || new Rectangle(0, 0, parent.getWidth(), parent.getHeight()).contains(child.getBounds());
    }

    private static boolean isWritten(Component child) {
        return child instanceof JLabel || isTarget(child);
    }

    private static boolean isTarget(Component child) {
        return child instanceof AbstractButton && !(child instanceof BasicArrowButton) && !isPartOfScrollBar(child);
    }

    private static boolean isPartOfScrollBar(Component child) {
        return child.getParent() instanceof JScrollBar;
    }

    private static String name(Component child) {
        String text = child instanceof JLabel label
                ? label.getText()
                : child instanceof AbstractButton button ? button.getText() : "";
        return child.getClass().getSimpleName() + " " + child.getName() + " \"" + text + "\"";
    }

    private static long shades(BufferedImage image) {
        return java.util.Arrays.stream(
                        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()))
                .distinct()
                .count();
    }

    private static void save(BufferedImage image, Scene scene, int width) throws IOException {
        SCREENSHOTS.mkdirs();
        String name = scene.name().toLowerCase(Locale.ROOT) + "-" + width + ".png";
        ImageIO.write(image, "png", new File(SCREENSHOTS, name));
    }

    /** A pilot who is asked nothing. */
    private static final class QuietPilot implements PilotFeed {
        @Override
        public void ask(PilotAsk ask) {
            throw new AssertionError("nobody asked");
        }

        @Override
        public String says() {
            return "On the water, rotors running down.";
        }
    }
}
