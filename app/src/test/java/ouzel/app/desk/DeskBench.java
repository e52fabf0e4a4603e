package ouzel.app.desk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Readings.Switch;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Status;

/** A desk under test: folds what it is told, moves time by hand and keeps what the fold wanted done. */
final class DeskBench {
    static final long SESSION = 0x5E55;

    private final List<Effect.Send> sends = new ArrayList<>();
    private DeskState state;
    private long millis;
    private SamplerState[] states = {SamplerState.SAFE, SamplerState.SAFE, SamplerState.SAFE};
    private Readings readings = goodForAll();
    private int met = -1;
    private int capabilities = Capability.all();
    private int bootCount = 12;
    private long session = SESSION;
    private long newestEvent;
    private long oldestEvent;
    private boolean afloat;

    /** A desk with an open session and a fresh status in which every permissive holds. */
    static DeskBench ready() {
        DeskBench bench = new DeskBench();
        bench.feed(new Stimulus.Opened(100, true, "Reed bed inlet"));
        bench.feed(new Stimulus.LineChanged(true, "open"));
        bench.feed(new Stimulus.SessionOpened(7, SESSION));
        bench.hearIdentity();
        bench.hearStatus();
        return bench;
    }

    private DeskBench() {
        state = Desk.start(now());
    }

    Moment now() {
        return new Moment(millis * 1_000_000, 1_700_000_000_000L + millis);
    }

    DeskState state() {
        return state;
    }

    Lane lane(Sampler sampler) {
        return state.lane(sampler);
    }

    DeskBench feed(Stimulus stimulus) {
        Desk.Step step = Desk.fold(state, now(), stimulus);
        state = step.state();
        for (Effect effect : step.effects()) {
            if (effect instanceof Effect.Send send) {
                sends.add(send);
            }
        }
        return this;
    }

    DeskBench act(Act act) {
        return feed(new Stimulus.Acted(act));
    }

    DeskBench hear(Downlink message) {
        return feed(new Stimulus.Heard(MessageCodec.encode(message, 7, 0, millis), message));
    }

    /** Hears what was said {@code lateMillis} ago. */
    DeskBench hearLate(Downlink message, long lateMillis) {
        return feed(new Stimulus.Heard(MessageCodec.encode(message, 7, 0, millis - lateMillis), message));
    }

    DeskBench hearStatus() {
        return hear(status());
    }

    Status status() {
        return new Status(
                session,
                Arrays.asList(states),
                9_000,
                met,
                newestEvent,
                oldestEvent,
                0,
                0,
                0,
                0,
                bootCount,
                afloat ? afloat(readings) : readings);
    }

    DeskBench hearIdentity() {
        return hear(new Identity("bench", capabilities, bootCount, 0, true));
    }

    /** Lets {@code duration} pass in ticks of 100 ms with a fresh status before each. */
    DeskBench pass(long duration) {
        for (long end = millis + duration; millis < end; ) {
            millis += 100;
            hearStatus();
            feed(new Stimulus.Ticked());
        }
        return this;
    }

    /** Lets {@code duration} pass in ticks of 100 ms without a word from the payload. */
    DeskBench passInSilence(long duration) {
        for (long end = millis + duration; millis < end; ) {
            millis += 100;
            feed(new Stimulus.Ticked());
        }
        return this;
    }

    DeskBench payload(Sampler sampler, SamplerState next) {
        states = states.clone();
        states[sampler.ordinal()] = next;
        return hearStatus();
    }

    DeskBench reads(Readings next) {
        readings = next;
        return hearStatus();
    }

    /** Puts the floats into the water from here on. */
    DeskBench afloat() {
        afloat = true;
        return hearStatus();
    }

    DeskBench saysUnmet(Permissive permissive) {
        met &= ~permissive.bit();
        return hearStatus();
    }

    DeskBench without(Capability capability) {
        capabilities &= ~capability.bit();
        return hearIdentity();
    }

    /** The payload names no session any more. */
    DeskBench losesSession() {
        session = 0;
        return hearStatus();
    }

    /** Another board in the payload: its starts count from 1, its clock from 0, and the console opens a session. */
    DeskBench reopensWithNewMemory(long number) {
        feed(new Stimulus.SessionLost("Session lost."));
        bootCount = 1;
        session = number;
        feed(new Stimulus.SessionOpened(7, number));
        return hearLate(status(), millis);
    }

    DeskBench restartsPayload() {
        bootCount++;
        return hearStatus();
    }

    DeskBench holdsEvents(long oldest, long newest) {
        oldestEvent = oldest;
        newestEvent = newest;
        return hearStatus();
    }

    DeskBench hearEvent(long number, Event.Kind kind, Sampler sampler, long orderId, Reason reason, int value) {
        return hear(new Event(number, bootCount, millis, kind, sampler, orderId, reason, value));
    }

    /** Arms {@code sampler} and lets the payload agree. */
    DeskBench armed(Sampler sampler) {
        if (sampler == Sampler.WATER) {
            afloat();
        }
        act(new Act.Arm(sampler));
        hear(Outcome.armed(lastSend().orderId(), 0xA11CEL, 9_000));
        return payload(sampler, SamplerState.ARMED);
    }

    /** Arms and triggers {@code sampler}; nothing is heard of the trigger yet. */
    long triggered(Sampler sampler) {
        armed(sampler);
        act(new Act.Trigger(sampler));
        return lastSend().orderId();
    }

    List<Effect.Send> sends() {
        return sends;
    }

    Effect.Send lastSend() {
        return sends.get(sends.size() - 1);
    }

    DeskBench forgetSends() {
        sends.clear();
        return this;
    }

    List<Effect.Send> sendsOf(Class<? extends Order> kind) {
        return sends.stream().filter(send -> kind.isInstance(send.order())).toList();
    }

    Optional<ConditionRow> row(Sampler sampler, Condition condition) {
        return Conditions.rows(state, sampler).stream()
                .filter(row -> row.condition() == condition)
                .findFirst();
    }

    boolean hasNote(String part) {
        return state.notes().stream().anyMatch(note -> note.sentence().contains(part));
    }

    /** Readings that suit every sampler at once, which no real place does: each test spoils what it is about. */
    static Readings goodForAll() {
        int switches = Switch.PLUG.bit()
                | Switch.INTAKE.bit()
                | Switch.LEGS.bit()
                | Switch.PROBE_HOME.bit()
                | Switch.SELF_TEST.bit();
        return new Readings(12_100, 150, 21, 20, 5, 143, 9_960, 40, 450, Readings.ABSENT, 9, switches);
    }

    /** {@link #goodForAll} with a tilt. */
    static Readings tilted(int tenths) {
        return with(goodForAll(), tenths, goodForAll().switches());
    }

    private static Readings afloat(Readings dry) {
        int wet = Switch.FLOAT_A.bit() | Switch.FLOAT_B.bit() | Switch.FLOAT_C.bit();
        return with(dry, dry.tiltTenths(), dry.switches() | wet);
    }

    private static Readings with(Readings base, int tiltTenths, int switches) {
        return new Readings(
                base.batteryMillivolts(),
                base.batteryMilliamps(),
                tiltTenths,
                base.motionMilligees(),
                base.vibrationMilligees(),
                base.temperatureTenths(),
                base.pressureTensPascals(),
                base.bagPascals(),
                base.gasKilopascals(),
                base.sinceVentSeconds(),
                base.strokesLeft(),
                switches);
    }
}
