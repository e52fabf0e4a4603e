package ouzel.app.screen;

import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.time.ZoneId;
import java.util.Optional;
import javax.swing.InputMap;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.UIManager;
import ouzel.app.desk.Conditions;
import ouzel.app.desk.DeskState;
import ouzel.app.screen.model.ClosingQuestion;
import ouzel.app.screen.model.DeskIntents;
import ouzel.app.screen.model.DeskPresenter;
import ouzel.app.screen.model.DeskView;

/**
 * The desk's window, the only one of the program.
 *
 * <p>A timer takes the newest state thirty times a second; a state that was seen already costs nothing, whatever comes
 * in between is skipped. Plots follow ten times a second.
 *
 * <p>Thread: EDT.
 */
public final class DeskWindow {
    private static final int FRAME_MILLIS = 33;
    private static final int FRAMES_PER_PLOT = 3;
    private static final long SILENCE_STEP_MILLIS = 100;

    private final DeskFeed feed;
    private final Runnable closed;
    private final JFrame frame;
    private final DeskIntents intents;
    private final DeskPresenter presenter;
    private final DeskPanel desk;
    private final KeyRouter keys;
    private final Timer timer = new Timer(FRAME_MILLIS, event -> showFrame());
    private DeskState shown;
    private long shownAtNanos = System.nanoTime();
    private long shownSilence;
    private long frames;

    /**
     * Builds the window without showing it; {@link LightLook#use} comes first.
     *
     * @param feed where states come from and acts go
     * @param pilot the simulated pilot of a rehearsal
     * @param facts what stands in the title
     * @param closed told once the window has really closed
     */
    public DeskWindow(DeskFeed feed, Optional<PilotFeed> pilot, TitleFacts facts, Runnable closed) {
        this(feed, pilot, facts, closed, new DeskPresenter(Conditions::rows, ZoneId.systemDefault()));
    }

    DeskWindow(DeskFeed feed, Optional<PilotFeed> pilot, TitleFacts facts, Runnable closed, DeskPresenter presenter) {
        this.feed = feed;
        this.closed = closed;
        this.presenter = presenter;
        this.intents = new DeskIntents(feed::act);
        this.frame = new JFrame(facts.title(feed.isLive()));
        this.desk = new DeskPanel(facts.mark(feed.isLive()), pilot, intents, ZoneId.systemDefault());
        this.keys = new KeyRouter(frame, desk, intents, pilot);
        buildFrame();
    }

    private void buildFrame() {
        frame.setContentPane(desk);
        frame.setDefaultCloseOperation(JFrame.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                closeAsked();
            }

            @Override
            public void windowDeactivated(WindowEvent event) {
                intents.holdBroken("keyboard lost");
                keys.forget();
            }
        });
        enterPressesButtons();
    }

    /** Space is the trigger's alone, so that Enter presses the focused button. */
    private static void enterPressesButtons() {
        for (String kind : new String[] {"Button", "ToggleButton"}) {
            InputMap map = (InputMap) UIManager.get(kind + ".focusInputMap");
            map.put(KeyStroke.getKeyStroke("ENTER"), "pressed");
            map.put(KeyStroke.getKeyStroke("released ENTER"), "released");
        }
    }

    /**
     * Builds and opens a window on the screen's thread; returns at once. Thread: any.
     *
     * @param closed told on the screen's thread once the window has really closed; must not wait
     */
    public static void show(DeskFeed feed, Optional<PilotFeed> pilot, TitleFacts facts, Runnable closed) {
        SwingUtilities.invokeLater(() -> {
            LightLook.use();
            new DeskWindow(feed, pilot, facts, closed).open();
        });
    }

    /** Shows the window as large as the screen allows and starts to follow the desk. */
    public void open() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addKeyEventDispatcher(keys);
        Rectangle usable = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        frame.setBounds(usable);
        frame.setMinimumSize(new Dimension(Math.min(usable.width, 1100), Math.min(usable.height, 680)));
        frame.setExtendedState(JFrame.MAXIMIZED_BOTH);
        showFrame();
        frame.setVisible(true);
        desk.requestFocusInWindow();
        timer.start();
    }

    private void showFrame() {
        long now = System.nanoTime();
        DeskState latest = feed.latest();
        if (latest != shown && isWorthAFrame(latest)) {
            shown = latest;
            shownAtNanos = now;
            render(0);
        } else if (feed.isLive()) {
            renderSilence((now - shownAtNanos) / 1_000_000);
        }
        intents.tick(now);
        desk.renderTime(now);
        if (frames++ % FRAMES_PER_PLOT == 0) {
            desk.redrawPlots();
        }
    }

    /** No newer state: ages must go on, but ten times a second is enough. */
    private void renderSilence(long silentMillis) {
        if (silentMillis - shownSilence >= SILENCE_STEP_MILLIS) {
            render(silentMillis);
        }
    }

    /** While nothing is live, ten frames a second are enough for figures that only flicker; an act is seen at once. */
    private boolean isWorthAFrame(DeskState latest) {
        return shown == null
                || frames % FRAMES_PER_PLOT == 0
                || latest.isAnythingLive()
                || latest.notes() != shown.notes();
    }

    private void render(long silentMillis) {
        shownSilence = silentMillis;
        DeskView all = presenter.view(shown, silentMillis);
        DeskView view = feed.isLive() ? all : all.shownOnly();
        intents.show(view);
        desk.render(view, shown.notes());
    }

    JFrame frame() {
        return frame;
    }

    private void closeAsked() {
        Optional<String> question = feed.isLive() ? ClosingQuestion.of(feed.latest()) : Optional.empty();
        if (question.isEmpty() || isClosingConfirmed(question.get())) {
            close();
        }
    }

    private boolean isClosingConfirmed(String question) {
        intents.holdBroken("a question is open");
        Object[] choices = {"Stay", "Close all the same"};
        int choice = JOptionPane.showOptionDialog(
                frame,
                question,
                "Something is live",
                JOptionPane.YES_NO_OPTION,
                JOptionPane.WARNING_MESSAGE,
                null,
                choices,
                choices[0]);
        return choice == 1;
    }

    /** Closes the window without asking. */
    public void close() {
        timer.stop();
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removeKeyEventDispatcher(keys);
        frame.dispose();
        closed.run();
    }
}
