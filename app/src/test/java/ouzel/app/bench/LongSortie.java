package ouzel.app.bench;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import ouzel.app.desk.Act;
import ouzel.app.desk.Moment;
import ouzel.app.exit.Refusal;
import ouzel.app.flight.Console;
import ouzel.app.flight.FrameOut;
import ouzel.app.flight.Setup;
import ouzel.app.journal.JournalFiles;
import ouzel.app.journal.JournalHeader;
import ouzel.app.journal.Recorder;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.ParserCounts;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.session.PairingKey;
import ouzel.simulator.profile.ProfileFile;
import ouzel.simulator.rehearsal.Pilot;
import ouzel.simulator.rehearsal.SimulatedPayload;
import ouzel.simulator.rehearsal.Site;

/** Ten hours on station in virtual time, with an air sample every five minutes, as one journal. */
final class LongSortie implements FrameOut {
    private static final long HOUR_MILLIS = 3_600_000;
    private static final long CYCLE_MILLIS = 300_000;

    private final SplittableRandom random = new SplittableRandom(9);
    private final SimulatedPayload payload = new SimulatedPayload(
            SimulatedPayload.reference(ProfileFile.reference(), 3, PairingKey.rehearsal(), random::nextLong),
            new Pilot(Site.REED_BED));
    private final List<Frame> onTheWayUp = new ArrayList<>();
    private final Console console;
    private long nowMillis;

    private LongSortie(Recorder recorder) {
        Setup setup = new Setup(PairingKey.rehearsal(), 0, this::nonce, 1, true, Site.REED_BED.name());
        console = new Console(setup, this::now, recorder, this, cue -> {});
        console.lineUp("Line open.");
    }

    /** Writes the journal of {@code hours} to {@code file} and gives the number of samples taken. */
    static int write(Path file, int hours) throws Refusal {
        JournalHeader header = new JournalHeader(Instant.EPOCH, true, "bench");
        JournalFiles.Opened journal = JournalFiles.reproducible(file, header, sentence -> {
            throw new IllegalStateException(sentence);
        });
        try (Recorder recorder = journal.recorder()) {
            LongSortie sortie = new LongSortie(recorder);
            while (sortie.nowMillis < hours * HOUR_MILLIS) {
                sortie.step();
            }
            return sortie.console.state().samples().size();
        }
    }

    private void step() {
        nowMillis += SimulatedPayload.STEP_MILLIS;
        List<Frame> arriving = List.copyOf(onTheWayUp);
        onTheWayUp.clear();
        arriving.forEach(payload::hear);
        payload.step();
        payload.takeFrames().forEach(console::heard);
        if (nowMillis % 100 == 0) {
            console.tick();
        }
        operate(nowMillis % CYCLE_MILLIS);
    }

    private void operate(long inCycle) {
        if (inCycle == 10_000) {
            console.act(new Act.Arm(Sampler.AIR));
        } else if (inCycle == 11_000) {
            console.act(new Act.Trigger(Sampler.AIR));
        } else if (inCycle == 120_000) {
            console.act(new Act.Reload(Sampler.AIR));
        }
    }

    private Moment now() {
        return new Moment(nowMillis * 1_000_000, nowMillis);
    }

    private Bytes nonce() {
        byte[] nonce = new byte[16];
        random.nextBytes(nonce);
        return Bytes.of(nonce);
    }

    @Override
    public void send(Frame frame) {
        onTheWayUp.add(frame);
    }

    @Override
    public void sendUrgent(Frame frame) {
        send(frame);
    }

    @Override
    public ParserCounts counts() {
        return ParserCounts.NONE;
    }
}
