package ouzel.app.screen;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.ListModel;
import javax.swing.ListSelectionModel;
import ouzel.app.screen.model.JournalView;

/**
 * The journal's lines, wrapped to the width there is.
 *
 * <p>Thread: EDT.
 */
final class JournalList extends JList<JournalView.Line> {
    JournalList(ListModel<JournalView.Line> lines) {
        super(lines);
        setName("journal");
        setBackground(LightLook.background("lane"));
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellRenderer(new LineView());
        getAccessibleContext().setAccessibleName("Journal, newest first");
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                measureAgain();
            }
        });
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    /** Another width wraps the lines elsewhere; setting a fixed height and taking it back forgets the heights. */
    private void measureAgain() {
        setFixedCellHeight(1);
        setFixedCellHeight(-1);
    }

    /** One line: its sign, and its words in the shade of its weight. */
    private static final class LineView extends JPanel implements ListCellRenderer<JournalView.Line> {
        private static final int SIGN_WIDTH = 18;

        private final JLabel sign = new JLabel();
        private final Paragraph words = new Paragraph(LightLook.font(0.93f, false));

        private LineView() {
            super(new BorderLayout());
            sign.setVerticalAlignment(JLabel.TOP);
            sign.setBorder(BorderFactory.createEmptyBorder(UIScale.scale(2), 0, 0, 0));
            sign.setPreferredSize(UIScale.scale(new java.awt.Dimension(SIGN_WIDTH, 16)));
            words.setBorder(BorderFactory.createEmptyBorder(0, 0, UIScale.scale(1), 0));
            add(sign, BorderLayout.WEST);
            add(words, BorderLayout.CENTER);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends JournalView.Line> list,
                JournalView.Line line,
                int index,
                boolean isSelected,
                boolean cellHasFocus) {
            sign.setIcon(SignIcon.ofTrouble(line.attention(), 12));
            sign.setForeground(LightLook.text(line.attention()));
            words.say(line.spoken());
            words.setForeground(isSelected ? list.getSelectionForeground() : LightLook.text(line.attention()));
            setBackground(isSelected ? list.getSelectionBackground() : list.getBackground());
            words.setSize(Math.max(1, list.getWidth() - UIScale.scale(SIGN_WIDTH)), Short.MAX_VALUE);
            getAccessibleContext().setAccessibleName(line.spoken());
            return this;
        }
    }
}
