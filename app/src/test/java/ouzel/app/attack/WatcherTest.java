package ouzel.app.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import ouzel.app.desk.Act;
import ouzel.app.desk.DeskState;
import ouzel.app.flight.Console;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.simulator.plant.Outputs;

/** A second console on the line that does not hold the key. */
class WatcherTest {
    private final Field field = Field.inSession();
    private final Console watcher = field.watcher(Field.key(2));

    @Test
    void seesTheTelemetryAndSaysThatItCannotAct() {
        field.run(3_000);

        DeskState seen = watcher.state();
        assertThat(seen.statusAgeMillis()).isLessThan(200);
        assertThat(seen.status().orElseThrow().status().states()).hasSize(3).containsOnly(SamplerState.SAFE);
        assertThat(seen.session().open()).isFalse();
        assertThat(notes(seen)).anyMatch(note -> note.contains("does not hold this console's pairing key"));
    }

    @Test
    void canDoNothingAndDisturbsNobody() {
        field.run(2_000);
        field.arm(Sampler.AIR);

        watcher.act(new Act.Trigger(Sampler.AIR));
        watcher.act(new Act.Stop(Sampler.AIR));
        watcher.act(new Act.SafeAll());
        field.run(2_000);

        assertThat(field.status().state(Sampler.AIR)).isEqualTo(SamplerState.ARMED);
        assertThat(field.payload.outputs()).isEqualTo(Outputs.OFF);
        assertThat(field.desk().session().open()).isTrue();
        assertThat(notes(watcher.state())).anyMatch(note -> note.contains("no session"));
    }

    @Test
    void seesADrawThatTheOtherConsoleRuns() {
        field.run(2_000);
        field.arm(Sampler.AIR);
        field.console.act(new Act.Trigger(Sampler.AIR));
        field.run(3_000);

        assertThat(watcher.state().status().orElseThrow().status().state(Sampler.AIR))
                .isEqualTo(field.status().state(Sampler.AIR))
                .isNotIn(SamplerState.SAFE, SamplerState.ARMED);
    }

    private static List<String> notes(DeskState state) {
        return state.notes().stream().map(note -> note.sentence()).toList();
    }
}
