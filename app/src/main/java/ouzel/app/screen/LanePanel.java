package ouzel.app.screen;

import java.awt.Component;
import java.awt.Insets;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import ouzel.app.desk.Condition;
import ouzel.app.screen.model.Alert;
import ouzel.app.screen.model.Attention;
import ouzel.app.screen.model.Cell;
import ouzel.app.screen.model.DeskIntents;
import ouzel.app.screen.model.LaneView;
import ouzel.app.screen.model.Standing;
import ouzel.app.screen.plot.LivePlot;
import ouzel.protocol.message.Sampler;

/**
 * One sampler: what it is doing, what may be done with it, what stands in the way, and what it draws.
 *
 * <p>The controls stand above everything that changes its height, so that no button ever moves under the hand.
 *
 * <p>Thread: EDT.
 */
final class LanePanel extends JPanel {
    private final Sampler sampler;
    private final DeskIntents intents;
    private final LastName lastName;
    private final BadgeView badge = new BadgeView();
    private final DoseField dose;
    private final JButton arm;
    private final HoldControl hold;
    private final JButton stop = new JButton("Stop  X");
    private final JButton reload = new JButton("Reload  R");
    private final JLabel hintSign = new JLabel();
    private final Paragraph hint = new Paragraph(LightLook.font(0.93f, true));
    private final InlineStrip strip = new InlineStrip(this::stripClosed);
    private final LadderPanel ladder = new LadderPanel(this::askName);
    private final JLabel orderName = new JLabel();
    private final StageLadder order = new StageLadder();
    private final Paragraph orderWords = new Paragraph(LightLook.font(0.9f, true));
    private final SteadyLabel fill = new SteadyLabel();
    private final SteadyLabel fillNote = new SteadyLabel();
    private final SteadyLabel facts = new SteadyLabel();
    private final Paragraph sample = new Paragraph(LightLook.font(0.9f, false));
    private final JLabel signalWord = new JLabel();
    private final Paragraph caution = new Paragraph(LightLook.font(0.86f, false));
    private final LivePlot plot;
    /** What was confirmed last: the screen learns a moment later that it holds. */
    private Optional<Condition> told = Optional.empty();

    private LaneView shown;

    LanePanel(Sampler sampler, String mark, DeskIntents intents, LastName lastName) {
        super(new MigLayout(
                "insets 6 10 6 10, gap 6 3, fill, hidemode 3, novisualpadding",
                "[grow,fill]",
                "[44!][48!][][][][shrinkprio 200,top][][][grow,fill,shrinkprio 300][][]"));
        this.sampler = sampler;
        this.intents = intents;
        this.lastName = lastName;
        this.dose = new DoseField(amount -> intents.doseEntered(sampler, amount));
        this.arm = new JButton("Arm  " + (sampler.ordinal() + 1));
        this.hold = new HoldControl(intents::holdPressed, intents::holdReleased);
        this.plot = new LivePlot(sampler.isPumped(), mark);
        setName(sampler.name());
        setBackground(LightLook.background("lane"));
        setBorder(BorderFactory.createLineBorder(javax.swing.UIManager.getColor("Ouzel.edge")));
        getAccessibleContext().setAccessibleName(sampler.name() + " lane");
        addTitle();
        addControls();
        addLadder();
        addOrder();
        addAmounts();
        addWords();
        wire();
    }

    private void addTitle() {
        JLabel name = new JLabel(sampler.name());
        name.setFont(LightLook.font(1.35f, true));
        JPanel row = row("[]10[grow][]", "[44!]");
        row.add(name);
        row.add(badge, "aligny center, h 32!, wmin 0");
        row.add(dose, "h 44!, wmin pref");
        add(row, "cell 0 0, wmin 0");
    }

    private void addControls() {
        JPanel row = row("[][grow,fill][][]", "[48!]");
        for (JButton button : new JButton[] {arm, stop, reload}) {
            button.setMargin(new Insets(2, 4, 2, 4));
            button.setFont(LightLook.font(1.0f, true));
        }
        row.add(arm, "h 48!, wmin pref");
        row.add(hold, "h 48!, wmin 0");
        row.add(stop, "h 48!, wmin pref");
        row.add(reload, "h 48!, wmin pref");
        add(row, "cell 0 1, wmin 0");
        JPanel hints = row("[]0[grow,fill]", "[]");
        hints.add(hintSign, "cell 0 0, aligny top, gaptop 2, gapright 6");
        hints.add(hint, "cell 1 0, wmin 0");
        add(hints, "cell 0 2, wmin 0");
        add(strip, "cell 0 3, wmin 0");
    }

    private void addLadder() {
        JScrollPane scroll = new JScrollPane(
                ladder,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        facts.setFont(LightLook.font(0.93f, false));
        JPanel row = row("[][grow][]", "[]");
        row.add(ladder.heading());
        row.add(facts, "cell 2 0, wmin 0");
        add(row, "cell 0 4, wmin 0");
        add(scroll, "cell 0 5, wmin 0, hmin 30");
    }

    private void addOrder() {
        JPanel row = row("[][grow,fill]", "[]");
        orderName.setFont(LightLook.font(0.95f, true));
        row.add(orderName, "aligny top");
        row.add(order, "wmin 0");
        row.add(orderWords, "newline, spanx, growx, wmin 0");
        add(row, "cell 0 6, wmin 0");
    }

    private void addAmounts() {
        fill.setFont(LightLook.font(1.25f, true));
        fillNote.setFont(LightLook.font(0.93f, false));
        JPanel row = row("[][grow][]", "[]");
        row.add(fill, "wmin pref");
        row.add(fillNote, "wmin 0, aligny baseline");
        add(row, "cell 0 7, wmin 0");
        add(plot, "cell 0 8, wmin 0");
    }

    private void addWords() {
        add(sample, "cell 0 9, wmin 0");
        JPanel row = row("[][grow,fill]", "[]");
        signalWord.setFont(LightLook.font(0.8f, true));
        signalWord.setOpaque(true);
        signalWord.setBorder(BorderFactory.createEmptyBorder(1, 6, 1, 6));
        signalWord.setBackground(LightLook.background("calm"));
        signalWord.setForeground(LightLook.foreground("calm"));
        caution.setForeground(LightLook.foreground("quiet"));
        row.add(signalWord, "aligny top");
        row.add(caution, "wmin 0");
        add(row, "cell 0 10, wmin 0");
    }

    private static JPanel row(String columns, String rows) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 6 0, fillx, hidemode 3, novisualpadding", columns, rows));
        row.setOpaque(false);
        return row;
    }

    private void wire() {
        arm.setName("arm " + sampler.name());
        arm.addActionListener(event -> intents.armPressed(sampler));
        hold.setName("hold " + sampler.name());
        stop.setName("stop " + sampler.name());
        PressDown.actsOn(stop, () -> intents.stopPressed(sampler));
        reload.setName("reload " + sampler.name());
        reload.addActionListener(event -> askReload());
    }

    /** Asks whether a fresh container is fitted, if it may be recorded now. */
    void askReload() {
        if (intents.mayReload(sampler)) {
            intents.selectPressed(sampler);
            strip.askReload(shown.controls().reloadQuestion(), () -> intents.reloadConfirmed(sampler));
        }
    }

    private void askName(Condition condition) {
        intents.holdCancelled("name asked");
        told = Optional.empty();
        strip.askName(condition, lastName.name(), person -> {
            told = Optional.of(condition);
            lastName.remember(person);
            intents.attested(condition, person);
        });
    }

    /** Closes an open question unanswered. */
    void closeStrip() {
        strip.close();
    }

    /** Where the keyboard goes on after a question: to what is next to be done here, never to a dead button. */
    private Component keyboardHome() {
        Optional<Component> confirm = ladder.firstConfirm(told);
        if (confirm.isPresent()) {
            return confirm.get();
        }
        if (hold.isEnabled()) {
            return hold;
        }
        return arm.isEnabled() ? arm : SwingUtilities.getAncestorOfClass(DeskPanel.class, this);
    }

    private void stripClosed() {
        keyboardHome().requestFocusInWindow();
        revalidate();
    }

    /** The time went on: only the hold control follows. */
    void renderHold(long nowNanos) {
        hold.render(intents.holdView(sampler, nowNanos));
    }

    /** Gives the plot its new points. */
    void redrawPlot() {
        plot.redraw();
    }

    void render(LaneView view) {
        if (view.equals(shown)) {
            return;
        }
        shown = view;
        badge.render(view.badge());
        dose.render(view.dose());
        renderControls(view.controls());
        ladder.render(view.ladder());
        renderOrder(view);
        renderAmount(fill, view.fill());
        fillNote.say(view.fill().note());
        fillNote.setForeground(LightLook.text(view.fill().attention()));
        renderAmount(facts, view.facts());
        plot.show(view.plot());
        sample.setVisible(view.sample().isPresent());
        view.sample().ifPresent(this::renderSample);
        signalWord.setText(view.caution().signalWord());
        caution.say(view.caution().text());
    }

    private void renderControls(LaneView.Controls controls) {
        arm.setEnabled(controls.arm());
        stop.setEnabled(controls.stop());
        reload.setEnabled(controls.reload());
        hint.say(controls.hint().sentence());
        hintSign.setVisible(controls.hint().attention() != Attention.CALM);
        hintSign.setForeground(LightLook.text(controls.hint().attention()));
        hintSign.setIcon(SignIcon.ofTrouble(controls.hint().attention(), 13));
        hint.setForeground(LightLook.text(controls.hint().attention()));
    }

    private void renderOrder(LaneView view) {
        order.getParent().setVisible(view.order().isPresent());
        view.order().ifPresent(line -> {
            orderName.setText(line.name());
            orderName.setForeground(LightLook.text(line.attention()));
            order.render(line);
            orderWords.say(line.words());
            orderWords.setVisible(!line.words().isEmpty());
            orderWords.setForeground(LightLook.text(line.attention()));
        });
    }

    private static void renderAmount(SteadyLabel label, Cell cell) {
        boolean live = cell.standing() == Standing.LIVE;
        label.say(cell.caption() + "  " + cell.value());
        label.setFont(AmountFonts.of(label.getFont(), cell.standing()));
        label.setForeground(LightLook.foreground(live ? "lane" : "quiet"));
        label.getAccessibleContext().setAccessibleName(cell.spoken());
        label.setToolTipText(cell.spoken());
    }

    private void renderSample(Alert alert) {
        sample.say(alert.sentence());
        sample.setForeground(LightLook.text(alert.attention()));
    }
}
