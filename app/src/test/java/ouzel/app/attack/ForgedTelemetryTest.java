package ouzel.app.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ouzel.app.desk.Act;
import ouzel.app.desk.Draw;
import ouzel.app.desk.Stimulus;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.CurrentTrace;
import ouzel.protocol.message.Sampler;
import ouzel.simulator.plant.Outputs;

/** Telemetry that no payload sent. It may deceive an operator; it may not exhaust, break or move anything. */
class ForgedTelemetryTest {
    private static final int LONGEST_HONEST_DRAW_SAMPLES = 60_000;

    private final Field field = Field.inSession();

    @Test
    void sixtyThousandStrangePayloadsAreSpokenOfAFewTimesOnly() {
        for (int number = 8; number < 60_000; number++) {
            field.console.heard(new Frame(new Header(Header.VERSION, 0x42, number, 1, 1), Bytes.of()));
        }

        assertThat(strangersRecorded()).isBetween(1L, 20L);
    }

    @Test
    void brokenMessagesThatAllDifferAreSpokenOfAFewTimesOnly() {
        SplittableRandom random = new SplittableRandom(8);
        for (int i = 0; i < 20_000; i++) {
            byte[] body = new byte[1 + random.nextInt(80)];
            random.nextBytes(body);
            field.console.heard(new Frame(
                    new Header(Header.VERSION, 0x40 + random.nextInt(0x20), 7, i & 0xFFFF, 1), Bytes.of(body)));
        }

        assertThat(strangersRecorded()).isBetween(1L, 20L);
    }

    @Test
    void strangersAreSpokenOfAgainLater() {
        Frame strange = new Frame(new Header(Header.VERSION, 0x42, 99, 1, 1), Bytes.of());
        field.console.heard(strange);
        field.run(31_000);
        field.console.heard(strange);

        assertThat(strangersRecorded()).isEqualTo(2);
    }

    @Test
    void aForgedTraceFillsNoMemoryWithSamplesThatNoDrawCanHave() {
        draw();

        for (long i = 0; i < 2_000; i++) {
            say(new CurrentTrace(Sampler.AIR, i * 2_990, List.of(500)), (int) i);
        }

        assertThat(drawSeen().current().length()).isLessThanOrEqualTo(LONGEST_HONEST_DRAW_SAMPLES);
    }

    @ParameterizedTest
    @ValueSource(longs = {0xFFFF_FFFFL, 0xFFFF_FFF0L, 0x8000_0000L})
    void aForgedTraceFromFarAheadAddsNothing(long firstSample) {
        field.arm(Sampler.AIR);
        field.console.act(new Act.Trigger(Sampler.AIR));
        while (field.desk().lane(Sampler.AIR).draw().isEmpty()) {
            field.run(10);
        }
        int before = drawSeen().current().length();

        for (int back = 0; back < 400; back++) {
            say(new CurrentTrace(Sampler.AIR, firstSample - back, Collections.nCopies(40, 500)), back);
        }

        assertThat(drawSeen().current().length()).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void nothingSaidAtRandomMakesTheDeskThrowOrThePayloadMove(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Kind[] kinds = Kind.values();
        for (int i = 0; i < 5_000; i++) {
            byte[] body = new byte[random.nextInt(100)];
            random.nextBytes(body);
            for (int at = 0; at < body.length; at++) {
                body[at] = random.nextInt(3) == 0 ? body[at] : (byte) random.nextInt(8);
            }
            Kind kind = kinds[random.nextInt(kinds.length)];
            field.console.heard(new Frame(
                    new Header(Header.VERSION, kind.code(), 7, random.nextInt(0x1_0000), random.nextLong(1L << 32)),
                    Bytes.of(body)));
            field.console.act(new Act.Trigger(Sampler.values()[i % 3]));
            if (i % 50 == 0) {
                field.run(100);
            }
        }

        assertThat(field.payload.outputs()).isEqualTo(Outputs.OFF);
        assertThat(field.payload.truth().air().onMillis()).isZero();
    }

    private long strangersRecorded() {
        return field.journal.entries().stream()
                .filter(entry -> entry.stimulus() instanceof Stimulus.StrangerHeard)
                .count();
    }

    private void draw() {
        field.arm(Sampler.AIR);
        field.console.act(new Act.Trigger(Sampler.AIR));
        field.run(1_500);
        assertThat(drawSeen().current().length()).isPositive();
    }

    private Draw drawSeen() {
        return field.desk().lane(Sampler.AIR).draw().orElseThrow();
    }

    private void say(CurrentTrace trace, int sequence) {
        field.console.heard(MessageCodec.encode(trace, 7, sequence & 0xFFFF, 1));
    }
}
