package ouzel.app.screen;

import java.awt.Font;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;

/**
 * Words that wrap instead of being cut, and cannot be edited or focused.
 *
 * <p>Thread: EDT.
 */
final class Paragraph extends JTextArea {
    Paragraph(Font font) {
        setFont(font);
        setLineWrap(true);
        setWrapStyleWord(true);
        setEditable(false);
        setFocusable(false);
        setHighlighter(null);
        setOpaque(false);
        setBorder(null);
        setMargin(null);
        setColumns(1);
        // Or else every new text would scroll whatever it stands in to its own end.
        ((DefaultCaret) getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
    }

    /** Assigns the words if they are others than before. */
    void say(String words) {
        if (!words.equals(getText())) {
            setText(words);
        }
    }
}
