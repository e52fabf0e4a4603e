package ouzel.app.screen;

import java.util.function.IntConsumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import ouzel.app.screen.model.LaneView;

/**
 * The amount that arming asks for.
 *
 * <p>Thread: EDT.
 */
final class DoseField extends JPanel {
    private static final int MOST = 0xFFFF;

    private final JSpinner amount = new JSpinner(new SpinnerNumberModel(1, 1, MOST, 10));
    private final JLabel unit = new JLabel();
    private boolean rendering;
    private LaneView.Dose shown;

    DoseField(IntConsumer entered) {
        super(new MigLayout("insets 0, gap 4 0, novisualpadding", "[][]", "[44!]"));
        setOpaque(false);
        amount.setName("dose");
        amount.setEditor(new JSpinner.NumberEditor(amount, "0"));
        amount.setFont(LightLook.font(1.1f, true));
        amount.addChangeListener(event -> {
            if (!rendering) {
                entered.accept((Integer) amount.getValue());
            }
        });
        unit.setFont(LightLook.font(0.93f, false));
        add(amount, "h 44!, w 84!");
        add(unit);
    }

    void render(LaneView.Dose dose) {
        if (dose.equals(shown)) {
            return;
        }
        shown = dose;
        rendering = true;
        amount.setValue(dose.amount());
        rendering = false;
        amount.setEnabled(dose.editable());
        unit.setText(dose.unit());
        unit.setToolTipText("Dose that arming asks for");
        JComponent editor = ((JSpinner.DefaultEditor) amount.getEditor()).getTextField();
        editor.getAccessibleContext().setAccessibleName("Dose in " + dose.unit());
    }
}
