package ouzel.simulator.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import ouzel.protocol.codec.Decoded;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Trigger;
import ouzel.protocol.session.ConsoleSession;
import ouzel.protocol.session.PairingKey;
import ouzel.simulator.plant.Surroundings.Place;
import ouzel.simulator.profile.ProfileFile;

/** The pilot who flies the plan by himself. */
class PlanPilotTest {
    private final SplittableRandom random = new SplittableRandom(4);
    private final SimulatedPayload payload = new SimulatedPayload(
            SimulatedPayload.reference(ProfileFile.reference(), 4, PairingKey.rehearsal(), random::nextLong),
            new Pilot(Site.QUARRY));
    private final PlanPilot plan = new PlanPilot(payload);
    private final ConsoleSession console = new ConsoleSession(PairingKey.rehearsal(), this::nonce, 0);
    private long millis;
    private long nextId = 1;
    private long token;

    @Test
    void staysWhereTheSampleIsDrawnUntilTheDrawHasEnded() {
        plan.ask(Place.AFLOAT);
        run(12_000);
        send(new Arm(Sampler.WATER, 60, 0));
        run(300);
        PlanPilot follows = new PlanPilot(payload);
        send(new Trigger(Sampler.WATER, token));
        run(1_000);
        assertThat(payload.outputs().waterPump()).isTrue();

        for (int i = 0; i < 300; i++) {
            follows.step();
            run(10);
        }

        assertThat(payload.pilot().place()).isEqualTo(Place.AFLOAT);
        assertThat(payload.outputs().waterPump()).isTrue();
    }

    private void run(long duration) {
        for (long end = millis + duration; millis < end; ) {
            millis += SimulatedPayload.STEP_MILLIS;
            console.tick(millis * 1_000_000).forEach(payload::hear);
            payload.step();
            for (Frame frame : payload.takeFrames()) {
                console.hear(frame, millis * 1_000_000);
                if (MessageCodec.decode(frame) instanceof Decoded.Known known
                        && known.message() instanceof Outcome outcome
                        && outcome.token() != 0) {
                    token = outcome.token();
                }
            }
        }
    }

    private void send(Order order) {
        payload.hear(console.seal(order, nextId++, 2_000, millis * 1_000_000));
    }

    private Bytes nonce() {
        byte[] bytes = new byte[16];
        random.nextBytes(bytes);
        return Bytes.of(bytes);
    }
}
