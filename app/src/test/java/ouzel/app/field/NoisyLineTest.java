package ouzel.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.BooleanSupplier;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import ouzel.app.desk.Act;
import ouzel.app.exit.Refusal;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.message.Sampler;
import ouzel.simulator.profile.ProfileFile;
import ouzel.simulator.rehearsal.Pilot;
import ouzel.simulator.rehearsal.SimulatedPayload;
import ouzel.simulator.rehearsal.Site;

/** A controller at the far end of a bad line: noise, restarts, half frames, silence. */
class NoisyLineTest {
    private static final long STEP_NANOS = SimulatedPayload.STEP_MILLIS * 1_000_000L;

    private static final int BOOT_NOISE_BYTES = 300;
    private static final long DEAF_MILLIS = 2_000;

    @TempDir
    private Path folder;

    private final FarEnd peer = new FarEnd();
    private final SimulatedPayload payload = new SimulatedPayload(
            SimulatedPayload.reference(ProfileFile.reference(), 3, Outing.KEY, () -> 11L), new Pilot(Site.QUARRY));
    private final Random chance = new Random(20_260_504);
    private Outing outing;
    private Cable cable;
    private int answered;
    private long livedToNanos = System.nanoTime();

    @BeforeEach
    void start() throws Refusal {
        outing = new Outing(folder);
        cable = new Cable(folder, peer.port());
        cable.plug("line0");
        outing.openDesk(cable.port("line0"));
        Awaitility.await("the cable").until(() -> peer.plugs() == 1);
        outing.await("an open line", state -> state.line().up());
    }

    @AfterEach
    void end() {
        outing.close();
        cable.close();
        peer.close();
    }

    @Test
    void aControllerThatRestartsWhenThePortOpensHearsNoOrderBeforeItsFirstFrame() {
        peer.say(noise(BOOT_NOISE_BYTES));
        outing.act(new Act.Arm(Sampler.AIR)).act(new Act.SafeAll());
        Awaitility.await("the end of the deafness")
                .pollDelay(Duration.ofMillis(DEAF_MILLIS))
                .until(() -> true);

        List<Frame> heardWhileDeaf = List.copyOf(peer.heard());
        assertThat(heardWhileDeaf).isNotEmpty().allMatch(frame -> frame.header().kind() == Kind.OPEN.code());
        answered = heardWhileDeaf.size();
        talkUntil("a session", () -> outing.state().isLinkFresh(), 0);
    }

    @Test
    void garbageBeforeAndBetweenFramesCostsOnlyItself() {
        talkUntil("a session", () -> outing.state().isLinkFresh(), 20);
        talkUntil("some corrupt frames counted", () -> outing.state().link().corrupt() > 5, 20);

        assertThat(outing.state().session().open()).isTrue();
        assertThat(outing.state().isLinkFresh()).isTrue();
    }

    @Test
    void aFrameThatBreaksOffWithThePlugIsNotJoinedToTheNextLine() {
        talkUntil("a session", () -> outing.state().isLinkFresh(), 0);
        peer.say(halfAFrame());
        cable.pull();
        outing.await("the loss", state -> !state.line().up());

        cable.plug("line0");
        Awaitility.await("the cable again").until(() -> peer.plugs() == 2);

        talkUntil("a session again", () -> outing.state().isLinkFresh(), 0);
        assertThat(outing.state().link().corrupt()).isZero();
    }

    @Test
    void aLongSilenceIsStaleAndNotLost() {
        talkUntil("a session", () -> outing.state().isLinkFresh(), 0);

        Awaitility.await("a silence")
                .pollDelay(Duration.ofMillis(4_000))
                .until(() -> !outing.state().isLinkFresh());
        assertThat(outing.state().line().up()).isTrue();
        nextFrames(); // said into the silence

        talkUntil("a fresh status", () -> outing.state().isLinkFresh(), 0);
        assertThat(outing.notes()).anyMatch(note -> note.startsWith("Status is fresh again"));
    }

    /** Lets the simulated payload live on the line, in real time, until something is so. */
    private void talkUntil(String what, BooleanSupplier isSo, int noiseBytes) {
        Awaitility.await(what)
                .atMost(Duration.ofSeconds(20))
                .pollDelay(Duration.ZERO)
                .pollInterval(Duration.ofMillis(SimulatedPayload.STEP_MILLIS))
                .until(() -> {
                    for (Frame frame : nextFrames()) {
                        peer.say(noise(chance.nextInt(noiseBytes + 1)));
                        peer.say(FrameEncoder.encode(frame));
                    }
                    return isSo.getAsBoolean();
                });
    }

    /** What the payload has to say after it has lived up to now, in real time. */
    private List<Frame> nextFrames() {
        List<Frame> heard = List.copyOf(peer.heard());
        heard.subList(answered, heard.size()).forEach(payload::hear);
        answered = heard.size();
        while (System.nanoTime() - livedToNanos >= STEP_NANOS) {
            livedToNanos += STEP_NANOS;
            payload.step();
        }
        return payload.takeFrames();
    }

    private byte[] halfAFrame() {
        List<Frame> frames = List.of();
        while (frames.isEmpty()) {
            frames = nextFrames();
        }
        byte[] whole = FrameEncoder.encode(frames.get(0));
        return Arrays.copyOf(whole, whole.length / 2);
    }

    private byte[] noise(int length) {
        byte[] noise = new byte[length];
        chance.nextBytes(noise);
        return noise;
    }
}
