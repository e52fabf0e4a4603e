package ouzel.app.attack;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import ouzel.app.desk.Act;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Lane;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Sampler;
import ouzel.simulator.plant.Outputs;

/** A whole desk to which somebody says whatever he likes while the operator does whatever he likes. */
class DeskFuzzTest {
    private static final int MOST_STEPS = 300;
    private static final List<Kind> DOWN = List.of(Kind.values()).stream()
            .filter(kind -> !Kind.travelsUp(kind.code()))
            .toList();

    @FuzzTest(maxDuration = "3m")
    void theDeskNeverThrowsNorGrowsNorMovesAnythingByItself(FuzzedDataProvider chance) {
        Field field = new Field(Field.KEY, Field.KEY, () -> 4L);
        field.run(600);
        for (int i = 0; i < MOST_STEPS && chance.remainingBytes() > 0; i++) {
            step(chance, field);
        }

        assertThat(field.payload.outputs()).isEqualTo(Outputs.OFF);
        isSmall(field.desk());
    }

    private static void step(FuzzedDataProvider chance, Field field) {
        Sampler sampler = chance.pickValue(Sampler.values());
        switch (chance.consumeInt(0, 9)) {
            case 0 -> field.run(10L * chance.consumeInt(1, 20));
            case 1 -> field.console.act(new Act.Stop(sampler));
            case 2 -> field.console.act(new Act.SafeAll());
            case 3 -> field.console.act(new Act.Reload(sampler));
            case 4 -> field.console.act(new Act.SetDose(sampler, chance.consumeInt()));
            case 5 -> field.console.act(new Act.Acknowledge(chance.consumeLong()));
            default -> field.console.heard(invented(chance));
        }
    }

    private static Frame invented(FuzzedDataProvider chance) {
        Header header = new Header(
                Header.VERSION,
                chance.pickValue(DOWN).code(),
                chance.consumeInt(0, 9) == 0 ? chance.consumeInt(0, 0xFFFF) : 7,
                chance.consumeInt(0, 0xFFFF),
                chance.consumeLong(0, 0xFFFF_FFFFL));
        return new Frame(header, Bytes.of(chance.consumeBytes(chance.consumeInt(0, Frame.LONGEST_BODY))));
    }

    private static void isSmall(DeskState desk) {
        assertThat(desk.notes()).hasSizeLessThanOrEqualTo(DeskState.MOST_NOTES);
        assertThat(desk.samples()).hasSizeLessThanOrEqualTo(MOST_STEPS);
        for (Lane lane : desk.lanes()) {
            lane.draw().ifPresent(draw -> assertThat(draw.current().length()).isLessThanOrEqualTo(60_000));
        }
    }
}
