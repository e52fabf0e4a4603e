package ouzel.app.screen.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ouzel.app.desk.Act;
import ouzel.app.desk.Condition;
import ouzel.app.desk.Conditions;
import ouzel.protocol.message.Sampler;

class DeskIntentsTest {
    private static final long MILLISECOND = 1_000_000;

    private final List<Act> acts = new ArrayList<>();
    private final DeskIntents intents = new DeskIntents(acts::add);
    private final DeskPresenter presenter = new DeskPresenter(Conditions::rows, ZoneOffset.UTC);
    private long millis;

    @Test
    void armsOnlyWhatMayBeArmed() {
        show(CraftedDesk.afloat());
        intents.armPressed(Sampler.SOIL);
        intents.armPressed(Sampler.WATER);

        assertThat(acts).containsExactly(new Act.Arm(Sampler.WATER));
    }

    @Test
    void aHoldTriggersTheArmedSamplerOnce() {
        show(CraftedDesk.afloat().armed(Sampler.WATER));
        intents.holdPressed(now());
        pass(3_000);

        assertThat(acts).containsExactly(new Act.Trigger(Sampler.WATER));
    }

    @Test
    void aHoldWithNothingArmedDoesNothing() {
        show(CraftedDesk.afloat());
        intents.holdPressed(now());
        pass(3_000);

        assertThat(acts).isEmpty();
    }

    @Test
    void aKeyHeldSinceBeforeArmingDoesNotTrigger() {
        show(CraftedDesk.afloat());
        intents.holdPressed(now());
        pass(500);
        show(CraftedDesk.afloat().armed(Sampler.WATER));
        pass(3_000);

        assertThat(acts).isEmpty();
    }

    @Test
    void aHoldEndsWhenItsSamplerIsNoLongerArmed() {
        show(CraftedDesk.afloat().armed(Sampler.WATER));
        intents.holdPressed(now());
        pass(500);
        show(CraftedDesk.afloat());
        pass(3_000);

        assertThat(acts).isEmpty();
    }

    @Test
    void safeAllIsLetThroughAlwaysAndBreaksAHold() {
        show(CraftedDesk.afloat().armed(Sampler.WATER));
        intents.holdPressed(now());
        pass(500);
        intents.safeAllPressed();
        pass(3_000);

        assertThat(acts).containsExactly(new Act.SafeAll());
    }

    @Test
    void safeAllNeedsNoView() {
        intents.safeAllPressed();

        assertThat(acts).containsExactly(new Act.SafeAll());
    }

    @Test
    void stopEndsWhatIsArmedOrActs() {
        show(CraftedDesk.afloat().drawing(Sampler.WATER, 100));
        intents.stopPressed();

        assertThat(acts).containsExactly(new Act.Stop(Sampler.WATER));
    }

    @Test
    void aBlankNameConfirmsNothing() {
        intents.attested(Condition.PEOPLE_CLEAR, "  ");
        intents.attested(Condition.PEOPLE_CLEAR, " J. Moss ");

        assertThat(acts).containsExactly(new Act.Attest(Condition.PEOPLE_CLEAR, "J. Moss"));
    }

    @Test
    void aDoseIsSetOnlyWhenItIsAnother() {
        show(CraftedDesk.afloat());
        intents.doseEntered(Sampler.WATER, 260);
        intents.doseEntered(Sampler.WATER, 180);

        assertThat(acts).containsExactly(new Act.SetDose(Sampler.WATER, 180));
    }

    @Test
    void theHoldControlSaysHowFarItIs() {
        show(CraftedDesk.afloat().armed(Sampler.WATER));
        intents.holdPressed(now());
        pass(500);

        assertThat(intents.holdView(Sampler.WATER, now()).note()).isEqualTo("0.5 of 0.8 s");
        assertThat(intents.holdView(Sampler.AIR, now()).enabled()).isFalse();
    }

    private void show(CraftedDesk desk) {
        intents.show(presenter.view(desk.state(), 0));
    }

    private long now() {
        return millis * MILLISECOND;
    }

    private void pass(long duration) {
        for (long end = millis + duration; millis < end; ) {
            millis += 20;
            intents.tick(now());
        }
    }
}
