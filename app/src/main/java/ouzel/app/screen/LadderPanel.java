package ouzel.app.screen;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;
import ouzel.app.desk.Condition;
import ouzel.app.screen.model.LadderView;

/**
 * The conditions of one sampler, what stands in the way on top and the rest folded.
 *
 * <p>Thread: EDT.
 */
final class LadderPanel extends JPanel implements Scrollable {
    private final Consumer<Condition> attest;
    private final JLabel heading = new JLabel();
    private final JPanel list =
            new JPanel(new MigLayout("insets 0, gap 0 2, wrap 1, fillx, novisualpadding", "[grow,fill]"));
    private final Paragraph folded = new Paragraph(LightLook.font(0.86f, false));
    private final Paragraph met = new Paragraph(LightLook.font(0.86f, false));
    private final List<ConditionRowView> rows = new ArrayList<>();
    private LadderView shown;

    LadderPanel(Consumer<Condition> attest) {
        super(new MigLayout("insets 0, gap 0 2, wrap 1, fillx, hidemode 3, novisualpadding", "[grow,fill]"));
        this.attest = attest;
        setOpaque(false);
        list.setOpaque(false);
        heading.setFont(LightLook.font(0.95f, true));
        folded.setForeground(LightLook.foreground("quiet"));
        met.setForeground(LightLook.foreground("quiet"));
        add(list, "wmin 0");
        add(folded, "wmin 0");
        add(met, "wmin 0");
    }

    /** The line that stands above the list and never scrolls away. */
    JLabel heading() {
        return heading;
    }

    void render(LadderView view) {
        if (view.equals(shown)) {
            return;
        }
        shown = view;
        heading.setText(view.heading());
        heading.setForeground(LightLook.text(view.attention()));
        adjustRows(view.rows().size());
        for (int i = 0; i < view.rows().size(); i++) {
            rows.get(i).render(view.rows().get(i));
        }
        folded.say(view.folded());
        folded.setVisible(!view.folded().isEmpty());
        met.say(view.met());
        met.setVisible(!view.met().isEmpty());
    }

    private void adjustRows(int count) {
        while (rows.size() < count) {
            ConditionRowView row = new ConditionRowView(attest);
            rows.add(row);
            list.add(row, "wmin 0");
        }
        while (rows.size() > count) {
            list.remove(rows.remove(rows.size() - 1));
        }
        list.setVisible(count > 0);
        list.revalidate();
        scrollRectToVisible(new Rectangle(0, 0, 1, 1));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return getFontMetrics(heading.getFont()).getHeight();
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return orientation == SwingConstants.VERTICAL ? visible.height : visible.width;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
