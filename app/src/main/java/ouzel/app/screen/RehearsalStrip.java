package ouzel.app.screen;

import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/**
 * What only a rehearsal has: the simulated pilot, whom the operator may ask.
 *
 * <p>Thread: EDT.
 */
final class RehearsalStrip extends JPanel {
    private final PilotFeed pilot;
    private final Paragraph says = new Paragraph(LightLook.font(0.93f, false));

    RehearsalStrip(PilotFeed pilot) {
        super(new MigLayout(
                "insets 3 8 3 8, gap 6 2, wrap 1, fill, novisualpadding", "[grow,fill]", "[grow][48!][48!][48!]"));
        this.pilot = pilot;
        setName("rehearsal");
        setBackground(LightLook.background("lane"));
        setBorder(BorderFactory.createLineBorder(LightLook.background("rehearsal"), 2));
        JLabel heading = new JLabel("Pilot");
        heading.setFont(LightLook.font(0.95f, true));
        heading.setForeground(LightLook.background("rehearsal"));
        add(heading, "split 2");
        says.setName("pilot says");
        add(says, "gapleft 6, wmin 0, growx");
        for (PilotAsk ask : PilotAsk.values()) {
            JButton button = new JButton(ask.words() + "    " + ask.key());
            button.setName("pilot " + ask.name());
            button.addActionListener(event -> pilot.ask(ask));
            add(button, "h 48!");
        }
    }

    void render() {
        says.say(pilot.says());
    }
}
