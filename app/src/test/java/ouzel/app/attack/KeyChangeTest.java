package ouzel.app.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ouzel.app.desk.Act;
import ouzel.app.flight.Console;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.simulator.plant.Outputs;

/** The payload was given another key on the bench, the console was not. */
class KeyChangeTest {
    private final Field field = Field.inSession();

    @Test
    void theSessionUnderTheOldKeyDiesAndTheDeskSaysWhy() {
        changeKey();

        field.run(4_000);

        assertThat(field.desk().session().open()).isFalse();
        assertThat(field.status().session()).isZero();
        assertThat(field.notes()).anyMatch(note -> note.contains("does not hold this console's pairing key"));
    }

    @Test
    void nothingSealedUnderTheOldKeyIsObeyedAnyMore() {
        field.arm(Sampler.AIR);
        Frame trigger = field.heldTrigger(Sampler.AIR);
        List<Frame> recorded = List.copyOf(field.up);
        changeKey();
        field.run(3_000);

        recorded.forEach(field.payload::hear);
        field.payload.hear(trigger);
        field.console.act(new Act.Arm(Sampler.AIR));
        field.run(12_000);

        assertThat(field.payload.outputs()).isEqualTo(Outputs.OFF);
        assertThat(field.status().states()).containsOnly(SamplerState.SAFE);
    }

    @Test
    void aConsoleThatIsGivenTheNewKeyTakesOver() {
        changeKey();
        Console second = field.watcher(Field.key(9));

        field.run(4_000);

        assertThat(second.state().session().open()).isTrue();
        assertThat(field.desk().session().open()).isFalse();
    }

    private void changeKey() {
        field.payload = Field.payload(Field.key(9), new SplittableRandom(6)::nextLong);
    }
}
