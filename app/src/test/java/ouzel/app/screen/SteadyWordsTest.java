package ouzel.app.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** Words that change with every reading lay the desk out again only where they must. */
class SteadyWordsTest {
    private static final int WIDTH = 200;

    private final JPanel around = new JPanel(null);

    @Test
    void aLabelsNewReadingOfTheSameLengthMovesNothing() throws Exception {
        assertThat(staysValid(new SteadyLabel(), "tilt  4.4 °", label -> label.say("tilt  4.1 °")))
                .isTrue();
    }

    @Test
    void aLabelThatNeedsMoreRoomGetsIt() throws Exception {
        assertThat(staysValid(new SteadyLabel(), "tilt", label -> label.say("tilt  11.2 °, not measured since 14 s")))
                .isFalse();
    }

    @Test
    void aParagraphThatWrapsToTheSameHeightMovesNothing() throws Exception {
        assertThat(staysValid(paragraph(), "battery 15.1 V", words -> words.say("battery 15.2 V")))
                .isTrue();
    }

    @Test
    void aParagraphThatWrapsToAnotherHeightIsLaidOutAgain() throws Exception {
        assertThat(staysValid(paragraph(), "battery 15.1 V", words -> words.say("battery 15.2 V, ".repeat(9))))
                .isFalse();
    }

    private static Paragraph paragraph() throws Exception {
        LightLook.use(14);
        return new Paragraph(LightLook.font(1, false));
    }

    /** True if {@code then} leaves all around the component laid out, once it stands there with {@code words}. */
    private <T extends JComponent> boolean staysValid(T component, String words, Consumer<T> then)
            throws InterruptedException, InvocationTargetException {
        boolean[] valid = {false};
        SwingUtilities.invokeAndWait(() -> {
            around.add(component);
            around.addNotify();
            first(component, words);
            component.setSize(component instanceof Paragraph ? WIDTH : component.getPreferredSize().width, 18);
            component.setSize(component.getWidth(), component.getPreferredSize().height);
            around.validate();
            then.accept(component);
            valid[0] = around.isValid();
        });
        return valid[0];
    }

    private static void first(JComponent component, String words) {
        if (component instanceof SteadyLabel label) {
            label.say(words);
        } else if (component instanceof Paragraph paragraph) {
            paragraph.say(words);
        }
    }
}
