package ouzel.app.screen;

import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import ouzel.app.screen.model.Alert;
import ouzel.app.screen.model.Attention;
import ouzel.app.screen.model.DeskIntents;
import ouzel.app.screen.model.HeaderView;

/**
 * The strip on top of the desk: link, battery, clock, site, and safe-all, which acts when it is pressed down.
 *
 * <p>Thread: EDT.
 */
final class HeaderPanel extends JPanel {
    private final CellView link = new CellView();
    private final CellView battery = new CellView();
    private final CellView clock = new CellView();
    private final CellView site = new CellView();
    private final JButton safeAll = new JButton("SAFE ALL    Esc");
    private final JLabel safeAllTrack = new JLabel();
    private final JLabel radioStop = new JLabel("radio stop, not a safety cut-off: the arming plug is");
    private final JLabel status = new JLabel();
    private HeaderView shown;

    HeaderPanel(String mark, DeskIntents intents) {
        super(new MigLayout("insets 4 6 2 6, gap 0 2, fillx, novisualpadding", "[grow,fill]", "[48!][24!]"));
        setOpaque(false);
        buildSafeAll(intents);
        addCells(mark);
        addStatus();
    }

    private void addCells(String mark) {
        JPanel row = row("[]4[]0[]0[]0[grow]8[240!]");
        row.add(markLabel(mark), "h 44!");
        row.add(link);
        row.add(battery);
        row.add(clock);
        row.add(site, "wmin 0");
        row.add(safeAll, "growx, h 48!");
        add(row, "wrap, wmin 0");
    }

    private static JPanel row(String columns) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 0, fillx, hidemode 3, novisualpadding", columns, "[]"));
        row.setOpaque(false);
        return row;
    }

    private static JLabel markLabel(String words) {
        JLabel mark = new JLabel(words);
        mark.setVisible(!words.isEmpty());
        mark.setOpaque(true);
        mark.setFont(LightLook.font(1.2f, true));
        mark.setBackground(LightLook.background("rehearsal"));
        mark.setForeground(LightLook.foreground("rehearsal"));
        mark.setBorder(BorderFactory.createEmptyBorder(2, 12, 2, 12));
        return mark;
    }

    private void buildSafeAll(DeskIntents intents) {
        safeAll.setName("safeAll");
        safeAll.setIcon(new SignIcon(SignIcon.Mark.STOP, 14));
        safeAll.setIconTextGap(12);
        safeAll.setFont(LightLook.font(1.2f, true));
        safeAll.setBackground(LightLook.background("safeAll"));
        safeAll.setForeground(LightLook.foreground("safeAll"));
        safeAll.setToolTipText("Everything off and disarmed, over the radio. The arming plug is what cuts the power.");
        safeAll.getAccessibleContext().setAccessibleDescription(safeAll.getToolTipText());
        PressDown.actsOn(safeAll, intents::safeAllPressed);
    }

    private void addStatus() {
        status.setFont(LightLook.font(0.93f, false));
        status.setIconTextGap(6);
        status.setOpaque(true);
        status.setBorder(BorderFactory.createEmptyBorder(2, 10, 2, 10));
        radioStop.setFont(LightLook.font(0.86f, false));
        radioStop.setForeground(LightLook.foreground("deskQuiet"));
        safeAllTrack.setFont(LightLook.font(0.86f, true));
        JPanel row = row("[grow,fill]10[]10[]");
        row.add(status, "wmin 0, h 24!");
        row.add(safeAllTrack);
        row.add(radioStop);
        add(row, "wmin 0");
    }

    void render(HeaderView view) {
        if (view.equals(shown)) {
            return;
        }
        shown = view;
        link.render(view.link());
        link.setToolTipText(tip(view.linkDetail()));
        battery.render(view.battery());
        clock.render(view.clock());
        site.render(view.site());
        status.setText(view.status().sentence());
        status.setToolTipText(view.status().sentence());
        status.setIcon(SignIcon.ofTrouble(view.status().attention(), 13));
        colour(status, view.status());
        safeAllTrack.setVisible(!view.safeAll().sentence().isEmpty());
        safeAllTrack.setText(view.safeAll().sentence());
        safeAllTrack.setIcon(SignIcon.ofTrouble(view.safeAll().attention(), 12));
        safeAllTrack.setForeground(LightLook.text(view.safeAll().attention()));
    }

    /** Swing breaks the lines of a tip only in HTML. */
    private static String tip(String lines) {
        return "<html>" + lines.replace("\n", "<br>") + "</html>";
    }

    private static void colour(JLabel label, Alert alert) {
        boolean calm = alert.attention() == Attention.CALM;
        label.setBackground(calm ? LightLook.background("desk") : LightLook.background(alert.attention()));
        label.setForeground(calm ? LightLook.foreground("deskQuiet") : LightLook.foreground(alert.attention()));
    }
}
