package ouzel.app.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ouzel.app.desk.Act;
import ouzel.app.desk.Condition;
import ouzel.app.desk.Conditions;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Draw;
import ouzel.app.desk.OrderTrack;
import ouzel.app.desk.Phase;
import ouzel.app.desk.Sample;
import ouzel.app.estimate.Verdict.Grade;
import ouzel.app.flight.LiveDesk;
import ouzel.app.testing.Needs;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.session.PairingKey;

/** The whole first sortie in a real window on the simulated payload: by keyboard alone, and by mouse alone. */
class SortieWindowTest {
    private static final Map<Sampler, Integer> SMALL_DOSES = Map.of(Sampler.WATER, 100, Sampler.AIR, 120);
    private static final Map<Sampler, Integer> ARM_KEYS =
            Map.of(Sampler.WATER, KeyEvent.VK_1, Sampler.AIR, KeyEvent.VK_2, Sampler.SOIL, KeyEvent.VK_3);

    @TempDir
    Path journals;

    private LiveDesk live;
    private OpenDesk screen;

    @BeforeEach
    void open() throws Exception {
        Needs.display();
        live = new LiveDesk(
                new LiveDesk.Request(
                        Optional.empty(), PairingKey.rehearsal(), true, 3, journals, "Quarry north shelf", "test"),
                cue -> {});
        SMALL_DOSES.forEach((sampler, dose) -> live.act(new Act.SetDose(sampler, dose)));
        screen = new OpenDesk(live, live.pilot().orElseThrow());
    }

    @AfterEach
    void close() throws Exception {
        if (screen != null) {
            screen.photograph("sortie-last");
            screen.close();
        }
        if (live != null) {
            live.close();
        }
    }

    @Test
    void threeSamplesAreTakenByKeyboardAlone() throws Exception {
        Hand keyboard = new Keyboard();

        flyAll(keyboard, "keys");

        assertThat(live.latest().samples())
                .extracting(sample -> sample.verdict().grade())
                .containsOnly(Grade.ACCEPTED);
        safeAllStopsARunningPump(keyboard);
    }

    @Test
    void threeSamplesAreTakenByMouseAlone() throws Exception {
        Hand mouse = new Mouse();

        flyAll(mouse, "mouse");

        assertThat(live.latest().samples())
                .extracting(Sample::sampler)
                .containsExactly(Sampler.AIR, Sampler.WATER, Sampler.SOIL);
        safeAllStopsARunningPump(mouse);
    }

    private void flyAll(Hand hand, String name) throws Exception {
        takeSample(hand, Sampler.AIR, name);
        hand.ask(PilotAsk.SET_DOWN_ON_WATER);
        takeSample(hand, Sampler.WATER, name);
        hand.ask(PilotAsk.SET_DOWN_ON_GROUND);
        soon(() -> state().lane(Sampler.SOIL).phase() == Phase.SAFE
                && holds(Condition.ON_GROUND)
                && holds(Condition.ROTORS_STOPPED));
        for (Condition told :
                new Condition[] {Condition.PILOT_SAYS_STOPPED, Condition.SERVICES_CHECKED, Condition.PEOPLE_CLEAR}) {
            hand.confirm(told);
        }
        takeSample(hand, Sampler.SOIL, name);
    }

    private void takeSample(Hand hand, Sampler sampler, String name) throws IOException {
        soon(() -> Conditions.mayArm(state(), sampler));
        usable("arm " + sampler);
        hand.arm(sampler);
        soon(() -> state().lane(sampler).phase() == Phase.ARMED);
        usable("hold " + sampler);
        screen.photograph("sortie-" + name + "-" + sampler + "-armed");
        int before = state().samples().size();
        hand.hold(sampler);
        if (sampler.isPumped()) {
            soon(() -> drawnSamples(sampler) > 150);
            int seen = drawnSamples(sampler);
            soon(() -> drawnSamples(sampler) > seen);
            screen.photograph("sortie-" + name + "-" + sampler + "-drawing");
        }
        soon(() -> state().samples().size() > before);
        screen.photograph("sortie-" + name + "-" + sampler + "-done");
    }

    private void safeAllStopsARunningPump(Hand hand) throws IOException {
        usable("reload " + Sampler.WATER);
        hand.reload(Sampler.WATER);
        soon(() -> state().lane(Sampler.WATER).phase() == Phase.SAFE);
        hand.ask(PilotAsk.SET_DOWN_ON_WATER);
        usable("arm " + Sampler.WATER);
        hand.arm(Sampler.WATER);
        soon(() -> state().lane(Sampler.WATER).phase() == Phase.ARMED);
        usable("hold " + Sampler.WATER);
        hand.hold(Sampler.WATER);
        soon(() -> state().lane(Sampler.WATER).phase() == Phase.DRAWING);

        hand.safeAll();

        await().atMost(Duration.ofSeconds(2))
                .until(() -> state().lane(Sampler.WATER).phase() == Phase.SPENT);
        screen.photograph("sortie-safe-all");
    }

    private DeskState state() {
        return live.latest();
    }

    private int drawnSamples(Sampler sampler) {
        return state().lane(sampler)
                .draw()
                .map(Draw::current)
                .map(current -> current.length())
                .orElse(0);
    }

    private boolean holds(Condition condition) {
        return Conditions.rows(state(), Sampler.SOIL).stream()
                .anyMatch(row -> row.condition() == condition && row.isMet() && !row.isDisputed());
    }

    private long lastTrigger(Sampler sampler) {
        return state().lane(sampler).trigger().map(OrderTrack::orderId).orElse(0L);
    }

    /** Waits until the control is there and answers, as an operator who looks at the screen would. */
    private void usable(String control) {
        soon(() -> screen.find(control).isEnabled());
    }

    private static void soon(Callable<Boolean> come) {
        await().atMost(Duration.ofSeconds(40)).until(come);
    }

    /** What an operator does on the screen. */
    private interface Hand {
        void ask(PilotAsk ask);

        void arm(Sampler sampler);

        void hold(Sampler sampler);

        void confirm(Condition condition);

        void reload(Sampler sampler);

        void safeAll();
    }

    private final class Keyboard implements Hand {
        @Override
        public void ask(PilotAsk ask) {
            screen.type(
                    switch (ask) {
                        case HOVER -> KeyEvent.VK_F2;
                        case SET_DOWN_ON_WATER -> KeyEvent.VK_F3;
                        case SET_DOWN_ON_GROUND -> KeyEvent.VK_F4;
                    });
        }

        @Override
        public void arm(Sampler sampler) {
            screen.type(ARM_KEYS.get(sampler));
        }

        @Override
        public void hold(Sampler sampler) {
            long before = lastTrigger(sampler);
            screen.keyDown(KeyEvent.VK_SPACE);
            soon(() -> lastTrigger(sampler) != before);
            screen.keyUp(KeyEvent.VK_SPACE);
        }

        @Override
        public void confirm(Condition condition) {
            screen.tabTo("confirm " + condition);
            screen.type(KeyEvent.VK_ENTER);
            screen.find("name");
            screen.type(KeyEvent.VK_M, KeyEvent.VK_A, KeyEvent.VK_ENTER);
            soon(() -> holds(condition));
        }

        @Override
        public void reload(Sampler sampler) {
            screen.tabTo("reload " + sampler);
            screen.type(KeyEvent.VK_ENTER);
            screen.tabTo("yes");
            screen.type(KeyEvent.VK_ENTER);
        }

        @Override
        public void safeAll() {
            screen.type(KeyEvent.VK_ESCAPE);
        }
    }

    private final class Mouse implements Hand {
        @Override
        public void ask(PilotAsk ask) {
            screen.click("pilot " + ask);
        }

        @Override
        public void arm(Sampler sampler) {
            screen.click("arm " + sampler);
        }

        @Override
        public void hold(Sampler sampler) {
            long before = lastTrigger(sampler);
            screen.mouseDown("hold " + sampler);
            soon(() -> lastTrigger(sampler) != before);
            screen.mouseUp();
        }

        @Override
        public void confirm(Condition condition) {
            screen.click("confirm " + condition);
            screen.find("name");
            // A name is typed; every later confirmation offers it again.
            if (state().attestations().isEmpty()) {
                screen.type(KeyEvent.VK_M, KeyEvent.VK_A);
            }
            screen.click("yes");
            soon(() -> holds(condition));
        }

        @Override
        public void reload(Sampler sampler) {
            screen.click("reload " + sampler);
            screen.click("yes");
        }

        @Override
        public void safeAll() {
            screen.click("safeAll");
        }
    }
}
