package ouzel.app.screen;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    /** Each condition keeps its view, so that the keyboard stays where it is while rows come, go and change places. */
    private final Map<Condition, ConditionRowView> rows = new EnumMap<>(Condition.class);

    private List<Condition> shownOrder = List.of();
    private LadderView shown;

    LadderPanel(Consumer<Condition> attest) {
        super(new MigLayout("insets 0, gap 0 2, wrap 1, fillx, hidemode 3, novisualpadding", "[grow,fill]"));
        this.attest = attest;
        setOpaque(false);
        list.setOpaque(false);
        list.setVisible(false);
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
        adjustRows(view.rows());
        view.rows().forEach(row -> rows.get(row.condition()).render(row));
        folded.say(view.folded());
        folded.setVisible(!view.folded().isEmpty());
        met.say(view.met());
        met.setVisible(!view.met().isEmpty());
    }

    /** The first button with which something else than {@code told} can be confirmed now. */
    Optional<Component> firstConfirm(Optional<Condition> told) {
        return shownOrder.stream()
                .filter(condition -> told.isEmpty() || condition != told.get())
                .map(rows::get)
                .flatMap(row -> row.confirmButton().stream())
                .findFirst();
    }

    private void adjustRows(List<LadderView.Row> wanted) {
        List<Condition> order = wanted.stream().map(LadderView.Row::condition).toList();
        if (order.equals(shownOrder)) {
            return;
        }
        shownOrder = order;
        for (Condition gone : List.copyOf(rows.keySet())) {
            if (!order.contains(gone)) {
                list.remove(rows.remove(gone));
            }
        }
        for (int i = 0; i < order.size(); i++) {
            ConditionRowView row = rows.get(order.get(i));
            if (row == null) {
                row = new ConditionRowView(attest);
                rows.put(order.get(i), row);
                list.add(row, "wmin 0", i);
            } else {
                list.setComponentZOrder(row, i);
            }
        }
        list.setVisible(!order.isEmpty());
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
