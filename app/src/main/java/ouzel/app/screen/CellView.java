package ouzel.app.screen;

import java.awt.Font;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import ouzel.app.screen.model.Cell;
import ouzel.app.screen.model.Standing;

/**
 * One value of the header strip: caption, value, and a note beside the caption.
 *
 * <p>Thread: EDT.
 */
final class CellView extends JPanel {
    private final SteadyLabel caption = new SteadyLabel();
    private final SteadyLabel value = new SteadyLabel();
    private final Font plain = LightLook.font(1.35f, true);
    private final Font struck = LightLook.struckThrough(plain);
    private Cell shown;

    CellView() {
        super(new MigLayout("insets 2 10 2 10, gap 0, wrap 1, novisualpadding", "[]", "[][]"));
        setOpaque(false);
        caption.setFont(LightLook.font(0.86f, false));
        caption.setForeground(LightLook.foreground("deskQuiet"));
        caption.setIconTextGap(6);
        value.setFont(plain);
        add(caption);
        add(value);
    }

    void render(Cell cell) {
        if (cell.equals(shown)) {
            return;
        }
        shown = cell;
        caption.say(cell.note().isEmpty() ? cell.caption() : cell.caption() + "   " + cell.note());
        caption.setIcon(SignIcon.ofTrouble(cell.attention(), 12));
        caption.setForeground(LightLook.text(cell.attention()));
        value.say(cell.value());
        value.setFont(cell.standing() == Standing.STALE ? struck : plain);
        value.setForeground(LightLook.foreground(cell.standing() == Standing.LIVE ? "desk" : "deskQuiet"));
        getAccessibleContext().setAccessibleName(cell.spoken());
    }
}
