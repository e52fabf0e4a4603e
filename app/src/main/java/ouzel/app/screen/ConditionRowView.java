package ouzel.app.screen;

import java.awt.Color;
import java.awt.Component;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import ouzel.app.desk.Condition;
import ouzel.app.screen.model.LadderView;

/**
 * One condition that stands in the way, or that somebody confirmed.
 *
 * <p>Thread: EDT.
 */
final class ConditionRowView extends JPanel {
    private final JLabel sign = new JLabel();
    private final Paragraph words = new Paragraph(LightLook.font(0.95f, true));
    private final Paragraph detail = new Paragraph(LightLook.font(0.86f, false));
    private final JButton confirm = new JButton();
    private LadderView.Row shown;

    ConditionRowView(Consumer<Condition> attest) {
        super(new MigLayout(
                "insets 1 0 1 0, gap 6 0, fillx, hidemode 3, novisualpadding", "[16!][grow,fill][]", "[][]"));
        setOpaque(false);
        detail.setForeground(LightLook.foreground("quiet"));
        confirm.addActionListener(event -> attest.accept(shown.condition()));
        add(sign, "cell 0 0, aligny top, gaptop 1");
        add(words, "cell 1 0, wmin 0");
        add(confirm, "cell 2 0 1 2, h 48!, wmin pref");
        add(detail, "cell 1 1, wmin 0");
    }

    void render(LadderView.Row row) {
        if (row.equals(shown)) {
            return;
        }
        shown = row;
        sign.setIcon(SignIcon.of(row.sign(), 14));
        sign.setForeground(color(row.sign()));
        words.say(row.words());
        words.setFont(LightLook.font(0.95f, row.sign() != LadderView.Sign.MET));
        words.setForeground(LightLook.foreground("lane"));
        detail.say(row.detail());
        detail.setVisible(!row.detail().isEmpty());
        confirm.setVisible(!row.confirm().isEmpty());
        confirm.setText(row.confirm());
        confirm.setName("confirm " + row.condition().name());
        confirm.getAccessibleContext()
                .setAccessibleName(row.confirm() + " " + row.condition().words());
        getAccessibleContext().setAccessibleName(row.words() + ". " + row.detail());
    }

    /** The button that confirms this condition, if it can be confirmed now. */
    Optional<Component> confirmButton() {
        return confirm.isVisible() && confirm.isEnabled() ? Optional.of(confirm) : Optional.empty();
    }

    private static Color color(LadderView.Sign sign) {
        return switch (sign) {
            case MET -> LightLook.foreground("lane");
            case UNMET, UNKNOWN, DISPUTED -> LightLook.foreground("noticeText");
        };
    }
}
