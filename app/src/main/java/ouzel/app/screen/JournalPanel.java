package ouzel.app.screen;

import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.ButtonGroup;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import ouzel.app.desk.Note;
import ouzel.app.screen.model.DeskIntents;
import ouzel.app.screen.model.JournalPresenter;
import ouzel.app.screen.model.JournalView;
import ouzel.protocol.message.Sampler;

/**
 * The journal list: what waits for the operator on the left, everything else newest first on the right.
 *
 * <p>Thread: EDT.
 */
final class JournalPanel extends JPanel {
    private final JournalPresenter presenter;
    private final DeskIntents intents;
    private final JPanel pinned =
            new JPanel(new MigLayout("insets 0, gap 6 3, fillx, wrap 2, novisualpadding", "[grow,fill][]"));
    private final JLabel pinnedHeading = new JLabel();
    private final DefaultListModel<JournalView.Line> lines = new DefaultListModel<>();
    private Optional<Sampler> only = Optional.empty();
    private List<Note> notes = List.of();
    private JournalView shown = new JournalView(List.of(), List.of());

    JournalPanel(JournalPresenter presenter, DeskIntents intents) {
        super(new MigLayout(
                "insets 2 10 4 10, gap 10 2, fill, novisualpadding",
                "[36%,grow,fill][64%,grow,fill]",
                "[48!][grow,fill,60::]"));
        this.presenter = presenter;
        this.intents = intents;
        setBackground(LightLook.background("lane"));
        setBorder(BorderFactory.createLineBorder(javax.swing.UIManager.getColor("Ouzel.edge")));
        addHeadings();
        addLists();
        renderPinned(List.of());
    }

    private void addHeadings() {
        pinnedHeading.setFont(LightLook.font(0.95f, true));
        add(pinnedHeading, "wmin 0");
        JPanel row = new JPanel(new MigLayout("insets 0, gap 4 0, fillx, novisualpadding", "[grow][][][][]", "[48!]"));
        row.setOpaque(false);
        JLabel heading = new JLabel("Journal");
        heading.setFont(LightLook.font(0.95f, true));
        row.add(heading);
        ButtonGroup group = new ButtonGroup();
        addFilter(row, group, "All", Optional.empty());
        for (Sampler sampler : Sampler.values()) {
            addFilter(row, group, sampler.name(), Optional.of(sampler));
        }
        add(row, "wrap, wmin 0");
    }

    private void addFilter(JPanel row, ButtonGroup group, String words, Optional<Sampler> sampler) {
        JToggleButton button = new JToggleButton(words, sampler.isEmpty());
        button.setName("filter " + words);
        button.addActionListener(event -> {
            only = sampler;
            assign();
        });
        group.add(button);
        row.add(button, "h 48!, wmin 64");
    }

    private void addLists() {
        pinned.setOpaque(false);
        JScrollPane pinnedScroll = new JScrollPane(pinned);
        pinnedScroll.setBorder(BorderFactory.createEmptyBorder());
        pinnedScroll.setOpaque(false);
        pinnedScroll.getViewport().setOpaque(false);
        add(pinnedScroll, "wmin 0");
        JournalList list = new JournalList(lines);
        JScrollPane scroll = new JScrollPane(list);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        add(scroll, "wmin 0");
    }

    void render(List<Note> next) {
        if (next != notes) {
            notes = next;
            assign();
        }
    }

    private void assign() {
        JournalView view = presenter.view(notes, only);
        if (!view.pinned().equals(shown.pinned())) {
            renderPinned(view.pinned());
        }
        if (!view.lines().equals(shown.lines())) {
            lines.clear();
            lines.addAll(view.lines());
        }
        shown = view;
    }

    private void renderPinned(List<JournalView.Line> waiting) {
        pinnedHeading.setText(waiting.isEmpty() ? "Nothing waits for you" : waiting.size() + " waiting for you");
        pinnedHeading.setForeground(LightLook.foreground(waiting.isEmpty() ? "quiet" : "alarmText"));
        pinned.removeAll();
        for (JournalView.Line line : waiting) {
            Paragraph words = new Paragraph(LightLook.font(0.93f, true));
            words.say(line.spoken());
            words.setForeground(LightLook.text(line.attention()));
            JButton seen = new JButton("Seen");
            seen.setName("seen " + line.note());
            seen.getAccessibleContext().setAccessibleName("Seen: " + line.sentence());
            seen.addActionListener(event -> intents.acknowledged(line.note()));
            pinned.add(words, "wmin 0");
            pinned.add(seen, "h 48!, aligny top");
        }
        pinned.revalidate();
        pinned.repaint();
    }
}
