package ouzel.app.screen;

import java.awt.Dimension;
import java.awt.Font;
import java.util.Objects;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.text.DefaultCaret;

/**
 * Words that wrap instead of being cut, and cannot be edited or focused.
 *
 * <p>Thread: EDT.
 */
final class Paragraph extends JTextArea {
    private boolean saying;

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

    /** Where the words wrap, and so how high they stand, follows from the width: a new width is laid out again. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean isOther = width != getWidth();
        super.setBounds(x, y, width, height);
        if (isOther && getPreferredSize().height != height) {
            SwingUtilities.invokeLater(this::revalidate);
        }
    }

    /** Words may be squeezed in width, never cut in height. */
    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }

    /** Assigns the words if they are others than before; a new layout follows only if they wrap to another height. */
    void say(String words) {
        if (!words.equals(getText())) {
            saying = true;
            setText(words);
            saying = false;
            if (getPreferredSize().height != getHeight()) {
                revalidate();
            }
        }
    }

    /** An equal font is the same font. */
    @Override
    public void setFont(Font font) {
        if (!Objects.equals(font, getFont())) {
            super.setFont(font);
        }
    }

    @Override
    public void revalidate() {
        if (!saying) {
            super.revalidate();
        }
    }
}
