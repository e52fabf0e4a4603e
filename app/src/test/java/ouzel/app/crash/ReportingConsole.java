package ouzel.app.crash;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import ouzel.app.desk.Act;
import ouzel.app.desk.Conditions;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Lane;
import ouzel.app.exit.Refusal;
import ouzel.app.flight.LiveDesk;
import ouzel.app.link.Port;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.session.PairingKey;

/**
 * A live desk without a window, meant to be killed: a hasty operator arms, triggers, stops and reloads the air sampler
 * without a pause, and every state of the desk that is seen goes to a file as a {@link Digest#line}.
 */
public final class ReportingConsole {
    private static final int SMALL_DOSE = 40;
    private static final long LOOK_MILLIS = 5;

    private final LiveDesk desk;
    private final Writer report;
    private final SplittableRandom chance;
    private DeskState seen;
    private int looksToWait;

    private ReportingConsole(LiveDesk desk, Writer report, long seed) {
        this.desk = desk;
        this.report = report;
        this.chance = new SplittableRandom(seed);
        desk.act(new Act.SetDose(Sampler.AIR, SMALL_DOSE));
    }

    /** Runs until it is killed or told to end; words: TCP port, directory for the journal, report file, seed. */
    public static void main(String[] words) throws IOException, Refusal {
        long seed = Long.parseLong(words[3]);
        LiveDesk desk = new LiveDesk(request(Integer.parseInt(words[0]), Path.of(words[1])), cue -> {});
        Runtime.getRuntime().addShutdownHook(new Thread(desk::close));
        ReportingConsole console = new ReportingConsole(desk, Files.newBufferedWriter(Path.of(words[2])), seed);
        ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor();
        clock.scheduleAtFixedRate(console::look, 0, LOOK_MILLIS, TimeUnit.MILLISECONDS);
    }

    /** How a desk is opened on the payload of this computer. */
    static LiveDesk.Request request(int port, Path journals) {
        return new LiveDesk.Request(
                Optional.of(new Port.Tcp("127.0.0.1", port)),
                PairingKey.rehearsal(),
                true,
                1,
                journals,
                "flooded quarry",
                "test");
    }

    private void look() {
        DeskState state = desk.latest();
        if (state == seen) {
            return;
        }
        seen = state;
        try {
            report.write(Digest.line(state) + "\n");
            report.flush();
        } catch (IOException trouble) {
            throw new IllegalStateException("the report cannot be written", trouble);
        }
        if (looksToWait-- <= 0 && state.isLinkFresh()) {
            next(state).ifPresent(act -> {
                desk.act(act);
                looksToWait = chance.nextInt(2, 12);
            });
        }
    }

    private Optional<Act> next(DeskState state) {
        Lane lane = state.lane(Sampler.AIR);
        return switch (lane.phase()) {
            case SAFE ->
                Conditions.mayArm(state, Sampler.AIR) ? Optional.of(new Act.Arm(Sampler.AIR)) : Optional.empty();
            case ARMED -> Optional.of(chance.nextInt(5) == 0 ? new Act.SafeAll() : new Act.Trigger(Sampler.AIR));
            case DRAWING -> chance.nextInt(9) == 0 ? Optional.of(new Act.Stop(Sampler.AIR)) : Optional.empty();
            case DONE, SPENT -> Optional.of(new Act.Reload(Sampler.AIR));
            default -> Optional.empty();
        };
    }
}
