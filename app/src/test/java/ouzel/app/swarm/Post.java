package ouzel.app.swarm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.function.Consumer;
import ouzel.app.desk.Act;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;
import ouzel.app.flight.Console;
import ouzel.app.flight.FrameOut;
import ouzel.app.flight.Setup;
import ouzel.app.journal.Recorder;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameParser;
import ouzel.protocol.frame.ParserCounts;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Status;
import ouzel.protocol.session.PairingKey;
import ouzel.simulator.radio.Radio;
import ouzel.simulator.radio.Weather;

/** A laptop on the ground with its console, its clock, its radio and what it has written down. */
final class Post implements FrameOut, Recorder {
    private static final long STARTED_UTC = 1_777_881_600_000L;

    private final int number;
    private final Scene scene;
    private final PairingKey key;
    private final SplittableRandom random;
    private final Consumer<Frame> antenna;
    private final Radio up;
    private final Radio down;
    private final FrameParser ear = new FrameParser();
    private final List<byte[]> inbox = new ArrayList<>();
    private final TreeSet<Long> recorded = new TreeSet<>();
    private Console console;
    private Optional<Stimulus> last = Optional.empty();
    private long eventsBefore;
    private long frozenUntil;
    private long deafUntil;
    private long clockOffset;
    private int program;

    Post(int number, Scene scene, PairingKey key, SplittableRandom random, Consumer<Frame> antenna) {
        this.number = number;
        this.scene = scene;
        this.key = key;
        this.random = random;
        this.antenna = antenna;
        this.up = new Radio(Weather.CLEAR, random.nextLong());
        this.down = new Radio(Weather.CLEAR, random.nextLong());
        start();
    }

    private void start() {
        last = Optional.empty();
        eventsBefore = 0;
        program++;
        boolean wraps = number == 0 && program == 1 && random.nextInt(8) == 0;
        long firstId = wraps ? 0xFFFF_FFFCL : random.nextLong(1, 1L << 31);
        Setup setup = new Setup(key, 0, this::nonce, firstId, true, "Quarry north shelf");
        console = new Console(setup, this::now, this, this, cue -> {});
    }

    private Bytes nonce() {
        byte[] nonce = new byte[16];
        random.nextBytes(nonce);
        return Bytes.of(nonce);
    }

    private Moment now() {
        return new Moment(scene.nowMillis() * 1_000_000, STARTED_UTC + scene.nowMillis() + clockOffset);
    }

    DeskState state() {
        return console.state();
    }

    /** Numbers of the events that this post's desks have taken, over all programs that ran here. */
    TreeSet<Long> recorded() {
        return recorded;
    }

    /** Tells this program on this laptop from every other. */
    String name() {
        return number + "." + program + " ";
    }

    boolean isFrozen() {
        return scene.nowMillis() < frozenUntil;
    }

    void act(Act act) {
        if (!isFrozen()) {
            console.act(act);
        }
    }

    void connect() {
        console.lineUp("Line open.");
    }

    void takeOver() {
        frozenUntil = 0;
        console.lineDown("Line closed.");
        console.lineUp("Line open.");
    }

    void leave() {
        frozenUntil = 0;
        console.lineDown("Line closed.");
    }

    void restart() {
        boolean wasUp = console.state().line().up();
        frozenUntil = 0;
        inbox.clear();
        ear.reset();
        settle();
        start();
        if (wasUp) {
            connect();
        }
    }

    void freeze(int millis) {
        frozenUntil = scene.nowMillis() + millis;
    }

    /** Nothing is received here for a while. */
    void deafen(int millis) {
        deafUntil = scene.nowMillis() + millis;
    }

    void setClock(long byMillis) {
        clockOffset += byMillis;
    }

    void weather(Weather weather) {
        up.weather(weather);
        down.weather(weather);
    }

    /** What reaches the payload from here in this step. */
    List<byte[]> arriving() {
        return up.receive(scene.nowMillis());
    }

    void sendThroughAir(byte[] bytes) {
        up.send(scene.nowMillis(), bytes);
    }

    /** The payload's words go through the air to this post. */
    void spoken(byte[] bytes) {
        down.send(scene.nowMillis(), bytes);
    }

    /** The laptop does what it does in one step. */
    void step() {
        List<byte[]> received = down.receive(scene.nowMillis());
        if (scene.nowMillis() >= deafUntil) {
            inbox.addAll(received);
        }
        if (isFrozen()) {
            return;
        }
        if (console.state().line().up()) {
            inbox.forEach(bytes -> ear.feed(bytes, console::heard));
        }
        inbox.clear();
        if (scene.nowMillis() % 100 == 0) {
            console.tick();
        }
        settle();
    }

    @Override
    public void send(Frame frame) {
        antenna.accept(frame);
    }

    @Override
    public void sendUrgent(Frame frame) {
        antenna.accept(frame);
    }

    @Override
    public ParserCounts counts() {
        return ear.counts();
    }

    @Override
    public void append(Moment at, Stimulus stimulus) {
        settle();
        last = Optional.of(stimulus);
    }

    /** Looks what the last stimulus has made of the desk's record of events. */
    private void settle() {
        if (last.isEmpty()) {
            return;
        }
        long newest = console.state().ledger().newestEvent();
        if (newest != eventsBefore) {
            taken(newest);
        }
        eventsBefore = newest;
        last = Optional.empty();
    }

    private void taken(long newest) {
        if (last.get() instanceof Stimulus.Heard heard && heard.message() instanceof Event event) {
            boolean follows = event.number() == newest && (eventsBefore == 0 || newest == eventsBefore + 1);
            scene.holds(follows, "events are taken in order", newest + " after " + eventsBefore);
            recorded.add(newest);
        } else {
            boolean byStatus = last.get() instanceof Stimulus.Heard heard && heard.message() instanceof Status;
            scene.holds(byStatus && newest > eventsBefore, "events are taken in order", newest + " by " + last.get());
        }
    }

    @Override
    public void whenDurable(Runnable done, Consumer<String> failed) {
        done.run();
    }

    @Override
    public void close() {
        // Nothing is held.
    }
}
