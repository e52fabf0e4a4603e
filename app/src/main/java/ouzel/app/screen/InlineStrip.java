package ouzel.app.screen;

import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import ouzel.app.desk.Condition;

/**
 * A question inside the lane instead of a dialog, so that nothing takes the keyboard from the desk unasked: a second
 * step before a container is recorded, or the name of the person who confirms.
 *
 * <p>Thread: EDT.
 */
final class InlineStrip extends JPanel {
    private final Paragraph question = new Paragraph(LightLook.font(0.95f, true));
    private final JTextField name = new JTextField(10);
    private final JButton yes = new JButton();
    private final JButton no = new JButton("Cancel");
    private final Runnable closed;
    private Consumer<String> answer = given -> {};

    /** @param closed told when the strip has gone */
    InlineStrip(Runnable closed) {
        super(new MigLayout(
                "insets 4 8 4 8, gap 6 2, fillx, hidemode 3, wrap 3, novisualpadding", "[grow,fill][][]", "[][48!]"));
        this.closed = closed;
        setBackground(LightLook.background("calm"));
        setBorder(BorderFactory.createLineBorder(LightLook.foreground("quiet")));
        setVisible(false);
        name.setName("name");
        name.getAccessibleContext().setAccessibleName("Name of the person who confirms");
        name.putClientProperty("JTextField.placeholderText", "who says so");
        name.addActionListener(event -> answered());
        yes.setName("yes");
        yes.addActionListener(event -> answered());
        no.setName("no");
        no.addActionListener(event -> close());
        add(question, "spanx, wmin 0");
        add(name, "wmin 60, h 48!");
        add(yes, "h 48!, skip 0");
        add(no, "h 48!");
    }

    void askReload(String words, Runnable confirmed) {
        answer = given -> confirmed.run();
        open(words, "Yes, record it", false);
        yes.requestFocusInWindow();
    }

    void askName(Condition condition, String lastName, Consumer<String> confirmed) {
        answer = confirmed;
        name.setText(lastName);
        name.selectAll();
        open("Confirm: " + condition.words() + " — who says so?", "Confirm", true);
        name.requestFocusInWindow();
    }

    /** Closes the strip unanswered, if it is open. */
    void close() {
        if (isVisible()) {
            setVisible(false);
            closed.run();
        }
    }

    private void open(String words, String confirmText, boolean withName) {
        question.say(words);
        yes.setText(confirmText);
        name.setVisible(withName);
        setVisible(true);
        revalidate();
    }

    private void answered() {
        if (name.isVisible() && name.getText().isBlank()) {
            name.requestFocusInWindow();
            return;
        }
        answer.accept(name.getText().strip());
        close();
    }
}
