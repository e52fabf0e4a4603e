package ouzel.app.screen;

import java.awt.Dimension;
import java.awt.Font;
import java.util.Objects;
import javax.swing.JLabel;

/**
 * A label whose words may change many times a second.
 *
 * <p>A new layout of everything around is asked for only when the words need more room than there is: laying the desk
 * out for every tenth of a degree was most of what an idle desk cost.
 *
 * <p>Thread: EDT.
 */
final class SteadyLabel extends JLabel {
    private boolean saying;

    /** Assigns the words. */
    void say(String words) {
        saying = true;
        setText(words);
        saying = false;
        Dimension wanted = getPreferredSize();
        if (wanted.width > getWidth() || wanted.height > getHeight()) {
            revalidate();
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
