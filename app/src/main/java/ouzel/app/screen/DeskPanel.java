package ouzel.app.screen;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.border.Border;
import net.miginfocom.swing.MigLayout;
import ouzel.app.desk.Note;
import ouzel.app.screen.model.DeskIntents;
import ouzel.app.screen.model.DeskView;
import ouzel.app.screen.model.JournalPresenter;
import ouzel.protocol.message.Sampler;

/**
 * The whole desk: header, three lanes, journal, and in a rehearsal the simulated pilot.
 *
 * <p>Thread: EDT.
 */
final class DeskPanel extends JPanel {
    private final HeaderPanel header;
    private final List<LanePanel> lanes = new ArrayList<>();
    private final JournalPanel journal;
    private final Optional<RehearsalStrip> rehearsalStrip;
    private final KeyHelp keyHelp;

    /**
     * @param mark what must not be mistaken, in a word; empty for a live flight
     * @param pilot the simulated pilot of a rehearsal
     * @param intents where keys and clicks go
     * @param zone the zone that clock times are shown in
     */
    DeskPanel(String mark, Optional<PilotFeed> pilot, DeskIntents intents, ZoneId zone) {
        super(new MigLayout(
                "insets 0 6 4 6, gap 6 4, fill, hidemode 3, novisualpadding",
                "[grow,fill]",
                "[][grow,fill][172:20%:280,fill][]"));
        this.header = new HeaderPanel(mark, intents);
        this.journal = new JournalPanel(new JournalPresenter(zone), intents);
        this.rehearsalStrip = pilot.map(RehearsalStrip::new);
        this.keyHelp = new KeyHelp(pilot.isPresent());
        setFocusable(true);
        setBorder(!mark.isEmpty() ? new HatchedBorder(LightLook.background("rehearsal")) : emptyBorder());
        add(header, "wrap, growx, wmin 0");
        addLanes(mark, intents);
        addJournal();
        add(keyHelp, "growx, wmin 0");
    }

    private static Border emptyBorder() {
        return BorderFactory.createEmptyBorder();
    }

    private void addLanes(String mark, DeskIntents intents) {
        LastName lastName = new LastName();
        JPanel row = new JPanel(
                new MigLayout("insets 0, gap 6 0, fill, novisualpadding", "[sg lane,grow,fill]", "[grow,fill]"));
        row.setOpaque(false);
        for (Sampler sampler : Sampler.values()) {
            LanePanel lane = new LanePanel(sampler, mark, intents, lastName);
            lanes.add(lane);
            row.add(lane, "wmin 0, w 100:33%");
        }
        add(row, "wrap, wmin 0, hmin 0");
    }

    private void addJournal() {
        JPanel row =
                new JPanel(new MigLayout("insets 0, gap 6 0, fill, novisualpadding", "[grow,fill][]", "[grow,fill]"));
        row.setOpaque(false);
        row.add(journal, "wmin 0, hmin 0");
        rehearsalStrip.ifPresent(strip -> row.add(strip, "w 300!, hmin 0"));
        add(row, "wrap, wmin 0, hmin 0");
    }

    /** Assigns what the newest view says. */
    void render(DeskView view, List<Note> notes) {
        header.render(view.header());
        Arrays.stream(Sampler.values()).forEach(sampler -> lane(sampler).render(view.lane(sampler)));
        journal.render(notes);
    }

    /** What follows the time and not the state: hold controls and the pilot's words. */
    void renderTime(long nowNanos) {
        lanes.forEach(lane -> lane.renderHold(nowNanos));
        rehearsalStrip.ifPresent(RehearsalStrip::render);
    }

    /** Gives the plots their new points; meant to be called ten times a second. */
    void redrawPlots() {
        lanes.forEach(LanePanel::redrawPlot);
    }

    /** The lane of one sampler. */
    LanePanel lane(Sampler sampler) {
        return lanes.get(sampler.ordinal());
    }

    /** Shows or hides the line that names the keys. */
    void toggleKeyHelp() {
        keyHelp.setVisible(!keyHelp.isVisible());
        revalidate();
    }

    /** Closes every open question unanswered. */
    void closeStrips() {
        lanes.forEach(LanePanel::closeStrip);
    }

    /** The line that names the keys. */
    private static final class KeyHelp extends JLabel {
        private KeyHelp(boolean withPilot) {
            super("Esc safe-all    1 2 3 arm    Space hold to trigger    X stop    R reload    Tab next, Enter press"
                    + (withPilot ? "     F2 F3 F4 ask the pilot" : "") + "     F1 this line");
            setFont(LightLook.font(0.86f, false));
            setForeground(LightLook.foreground("deskQuiet"));
            setVisible(false);
        }
    }
}
