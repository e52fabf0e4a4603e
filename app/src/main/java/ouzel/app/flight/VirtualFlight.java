package ouzel.app.flight;

import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import ouzel.app.desk.Act;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Moment;
import ouzel.app.journal.Recorder;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.frame.FrameParser;
import ouzel.protocol.frame.ParserCounts;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.session.PairingKey;
import ouzel.simulator.plant.PayloadProfile;
import ouzel.simulator.plant.Surroundings.Place;
import ouzel.simulator.radio.Radio;
import ouzel.simulator.radio.Weather;
import ouzel.simulator.rehearsal.Pilot;
import ouzel.simulator.rehearsal.SimulatedPayload;
import ouzel.simulator.rehearsal.Site;

/**
 * Console, radio, payload and plant in one thread and in virtual time: all of it follows from one seed.
 *
 * <p><b>Thread:</b> one at a time.
 */
final class VirtualFlight implements FrameOut, ScriptedOperator.Hands {
    /** The wall-clock instant at which every virtual flight starts, so that a seed gives the same bytes on any day. */
    static final Instant STARTED = Instant.parse("2026-05-04T08:00:00Z");

    private static final int TICK_MILLIS = 100;

    private final Radio up;
    private final Radio down;
    private final FrameParser consoleEar = new FrameParser();
    private final SimulatedPayload payload;
    private final Console console;
    private final Tap tap;
    private long nowMillis;

    /**
     * What a virtual flight is made from.
     *
     * @param profile the payload's parts
     * @param site where
     * @param weather what the radio does, both ways
     * @param seed all chance comes from here
     */
    record World(PayloadProfile profile, Site site, Weather weather, long seed) {}

    /** Looks at every frame that the console sends, as bytes on the line, and says whether it gets through. */
    interface Tap {
        boolean passes(byte[] bytes);
    }

    VirtualFlight(World world, Recorder recorder) {
        this(world, recorder, PairingKey.rehearsal(), bytes -> true);
    }

    /** A flight whose console holds {@code consoleKey}, and whose uplink goes through {@code tap}. */
    VirtualFlight(World world, Recorder recorder, PairingKey consoleKey, Tap tap) {
        this.tap = tap;
        SplittableRandom chance = new SplittableRandom(world.seed());
        up = new Radio(world.weather(), chance.nextLong());
        down = new Radio(world.weather(), chance.nextLong());
        SplittableRandom onBoard = chance.split();
        payload = new SimulatedPayload(
                SimulatedPayload.reference(
                        world.profile(), chance.nextLong(), PairingKey.rehearsal(), onBoard::nextLong),
                new Pilot(world.site()));
        Supplier<Bytes> nonces = noncesFrom(chance.split());
        long firstOrderId = chance.nextLong(1, 1L << 31);
        Setup setup = new Setup(
                consoleKey, 0, nonces, firstOrderId, true, world.site().name());
        console = new Console(setup, this::now, recorder, this, cue -> {});
        console.lineUp("Simulated payload in this program.");
    }

    private static Supplier<Bytes> noncesFrom(SplittableRandom random) {
        return () -> {
            byte[] nonce = new byte[16];
            random.nextBytes(nonce);
            return Bytes.of(nonce);
        };
    }

    /** Moves everything on by one step of the payload. */
    void step() {
        nowMillis += SimulatedPayload.STEP_MILLIS;
        for (byte[] bytes : up.receive(nowMillis)) {
            payload.hear(bytes);
        }
        payload.step();
        List<Frame> spoken = payload.takeFrames();
        for (Frame frame : spoken) {
            down.send(nowMillis, FrameEncoder.encode(frame));
        }
        for (byte[] bytes : down.receive(nowMillis)) {
            consoleEar.feed(bytes, console::heard);
        }
        if (nowMillis % TICK_MILLIS == 0) {
            console.tick();
            console.tellTruth(payload.truth());
        }
    }

    /** Steps until {@code millis}. */
    void runTo(long millis) {
        while (nowMillis < millis) {
            step();
        }
    }

    long nowMillis() {
        return nowMillis;
    }

    Moment now() {
        return new Moment(nowMillis * 1_000_000, STARTED.toEpochMilli() + nowMillis);
    }

    DeskState state() {
        return console.state();
    }

    /** Both directions of the radio change their weather from here on. */
    void weather(Weather next) {
        up.weather(next);
        down.weather(next);
    }

    SimulatedPayload payload() {
        return payload;
    }

    @Override
    public void act(Act act) {
        console.act(act);
    }

    @Override
    public void askPilot(Place place) {
        payload.pilot().ask(place);
    }

    @Override
    public boolean isPilotSettled() {
        return payload.pilot().isSettled();
    }

    @Override
    public void send(Frame frame) {
        byte[] bytes = FrameEncoder.encode(frame);
        if (tap.passes(bytes)) {
            up.send(nowMillis, bytes);
        }
    }

    @Override
    public void sendUrgent(Frame frame) {
        send(frame);
    }

    @Override
    public ParserCounts counts() {
        return consoleEar.counts();
    }
}
