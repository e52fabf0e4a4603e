package ouzel.app.attack;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.function.Supplier;
import ouzel.app.desk.Act;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Moment;
import ouzel.app.flight.Console;
import ouzel.app.flight.FrameOut;
import ouzel.app.flight.Setup;
import ouzel.app.journal.MemoryJournal;
import ouzel.protocol.codec.Decoded;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.ParserCounts;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Status;
import ouzel.protocol.session.PairingKey;
import ouzel.simulator.plant.Outputs;
import ouzel.simulator.profile.ProfileFile;
import ouzel.simulator.rehearsal.Pilot;
import ouzel.simulator.rehearsal.SimulatedPayload;
import ouzel.simulator.rehearsal.Site;

/** A console and a payload in virtual time on a perfect line, and somebody in between who records and stops frames. */
final class Field {
    static final PairingKey KEY = key(1);

    final MemoryJournal journal = new MemoryJournal();
    final List<Frame> up = new ArrayList<>();
    final List<Frame> down = new ArrayList<>();
    /** Frames on their way up for which this is false do not arrive. */
    Predicate<Frame> passes = frame -> true;

    SimulatedPayload payload;
    final Console console;
    private final List<Frame> onTheWayUp = new ArrayList<>();
    private final List<Console> watchers = new ArrayList<>();
    private long nowMillis;

    /** {@code random} is what payload and console draw their randomness from. */
    Field(PairingKey onBoard, PairingKey atTheDesk, Supplier<Long> random) {
        payload = payload(onBoard, random);
        console = console(atTheDesk, random, journal);
    }

    /** Both ends hold the same key and draw good randomness. */
    static Field inSession() {
        SplittableRandom random = new SplittableRandom(11);
        Field field = new Field(KEY, KEY, random::nextLong);
        field.run(4_000);
        return field;
    }

    static PairingKey key(int fill) {
        byte[] secret = new byte[PairingKey.LENGTH];
        secret[0] = (byte) fill;
        secret[31] = 0x5A;
        return PairingKey.of(secret);
    }

    static SimulatedPayload payload(PairingKey key, Supplier<Long> random) {
        return new SimulatedPayload(
                SimulatedPayload.reference(ProfileFile.reference(), 3, key, random::get), new Pilot(Site.QUARRY));
    }

    private Console console(PairingKey key, Supplier<Long> random, MemoryJournal record) {
        Supplier<Bytes> nonces = () -> {
            byte[] nonce = new byte[16];
            for (int i = 0; i < nonce.length; i++) {
                nonce[i] = (byte) random.get().longValue();
            }
            return Bytes.of(nonce);
        };
        Console made =
                new Console(new Setup(key, 0, nonces, 1, true, "quarry"), this::now, record, new Out(), cue -> {});
        made.lineUp("Line open.");
        return made;
    }

    /** A second console on the same line. */
    Console watcher(PairingKey key) {
        Console watcher = console(key, new SplittableRandom(12)::nextLong, new MemoryJournal());
        watchers.add(watcher);
        return watcher;
    }

    Moment now() {
        return new Moment(nowMillis * 1_000_000, Instant.EPOCH.toEpochMilli() + nowMillis);
    }

    void run(long millis) {
        for (long end = nowMillis + millis; nowMillis < end; ) {
            step();
        }
    }

    private void step() {
        nowMillis += SimulatedPayload.STEP_MILLIS;
        List<Frame> arriving = List.copyOf(onTheWayUp);
        onTheWayUp.clear();
        arriving.forEach(payload::hear);
        payload.step();
        for (Frame frame : payload.takeFrames()) {
            down.add(frame);
            console.heard(frame);
            watchers.forEach(watcher -> watcher.heard(frame));
        }
        if (nowMillis % 100 == 0) {
            console.tick();
            watchers.forEach(Console::tick);
        }
    }

    DeskState desk() {
        return console.state();
    }

    Status status() {
        return desk().status().orElseThrow().status();
    }

    List<String> notes() {
        return desk().notes().stream().map(note -> note.sentence()).toList();
    }

    void arm(Sampler sampler) {
        console.act(new Act.Arm(sampler));
        run(500);
    }

    /** Triggers {@code sampler} and stops the order on its way; gives the stopped frame. */
    Frame heldTrigger(Sampler sampler) {
        passes = frame -> frame.header().kind() != Kind.TRIGGER.code();
        console.act(new Act.Trigger(sampler));
        passes = frame -> true;
        return up.stream()
                .filter(frame -> frame.header().kind() == Kind.TRIGGER.code())
                .findFirst()
                .orElseThrow();
    }

    /** What an attack must not change. */
    Standing standing() {
        return new Standing(
                status().session(),
                status().states(),
                status().newestEvent(),
                payload.outputs(),
                payload.truth().air().onMillis(),
                desk().session().open());
    }

    /** What an attack must not change. */
    record Standing(
            long session,
            List<SamplerState> states,
            long newestEvent,
            Outputs outputs,
            long pumpOnMillis,
            boolean consoleInSession) {}

    static boolean isStatus(Frame frame) {
        return MessageCodec.decode(frame) instanceof Decoded.Known known && known.message() instanceof Status;
    }

    private final class Out implements FrameOut {
        @Override
        public void send(Frame frame) {
            up.add(frame);
            if (passes.test(frame)) {
                onTheWayUp.add(frame);
            }
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
}
