package ouzel.app.screen.model;

import java.util.ArrayList;
import java.util.List;
import ouzel.app.desk.Act;
import ouzel.app.desk.Desk;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Effect;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.CurrentTrace;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Readings.Switch;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Status;
import ouzel.protocol.session.LinkHealth;

/** A desk whose states a screen test can bring about one by one, through the real fold, with time moved by hand. */
public final class CraftedDesk {
    private static final long SESSION = 0x5E55;
    private static final int PAYLOAD = 7;

    private final List<SamplerState> states =
            new ArrayList<>(List.of(SamplerState.SAFE, SamplerState.SAFE, SamplerState.SAFE));
    private DeskState state = Desk.start(now());
    private long millis;
    private int tiltTenths = 21;
    private int switches = Switch.PLUG.bit()
            | Switch.FLOAT_A.bit()
            | Switch.FLOAT_B.bit()
            | Switch.FLOAT_C.bit()
            | Switch.INTAKE.bit()
            | Switch.PROBE_HOME.bit()
            | Switch.SELF_TEST.bit();
    private int permissivesMet = -1;
    private long lastOrder;
    private long events;

    private CraftedDesk() {}

    /** A desk that was just opened: no line, no session. */
    public static CraftedDesk opened() {
        return new CraftedDesk().feed(new Stimulus.Opened(100, true, "Reed bed inlet"));
    }

    /** A desk with an open session; the payload floats, and every condition of the water sampler holds. */
    public static CraftedDesk afloat() {
        return opened().feed(new Stimulus.LineChanged(true, "Bench line open."))
                .feed(new Stimulus.SessionOpened(PAYLOAD, SESSION))
                .hear(new Identity("bench 1.0", Capability.all(), 12, 0, true))
                .feed(new Stimulus.LinkMeasured(LinkHealth.counted(987, 13, 0.987, 0, 42)))
                .hearStatus();
    }

    public DeskState state() {
        return state;
    }

    /** Lets time pass with a fresh status every 100 ms. */
    public CraftedDesk pass(long duration) {
        for (long end = millis + duration; millis < end; ) {
            millis += 100;
            hearStatus().feed(new Stimulus.Ticked());
        }
        return this;
    }

    /** Lets time pass without a word from the payload. */
    public CraftedDesk passInSilence(long duration) {
        for (long end = millis + duration; millis < end; ) {
            millis += 100;
            feed(new Stimulus.Ticked());
        }
        return this;
    }

    public CraftedDesk act(Act act) {
        return feed(new Stimulus.Acted(act));
    }

    /** The payload stands at this tilt from here on, 0.1 degree. */
    public CraftedDesk tilted(int tenths) {
        tiltTenths = tenths;
        return hearStatus();
    }

    /** The payload says of itself which permissives hold, from here on. */
    public CraftedDesk payloadSays(int met) {
        permissivesMet = met;
        return hearStatus();
    }

    /** Arms {@code sampler}; the payload agrees. */
    public CraftedDesk armed(Sampler sampler) {
        act(new Act.Arm(sampler)).pass(100);
        hear(Outcome.armed(lastOrder, 0xA11CE, 9_000));
        return turned(sampler, SamplerState.ARMED);
    }

    /** Arms and triggers {@code sampler}; the pump starts, and {@code samples} of its current arrive. */
    public CraftedDesk drawing(Sampler sampler, int samples) {
        armed(sampler).act(new Act.Trigger(sampler)).pass(100);
        hear(Outcome.of(lastOrder, Outcome.Stage.ACCEPTED)).hear(Outcome.of(lastOrder, Outcome.Stage.STARTED));
        event(Event.Kind.DRAW_STARTED, sampler, 260).turned(sampler, SamplerState.DRAWING);
        for (int first = 0; first < samples; first += CurrentTrace.MOST_SAMPLES) {
            hear(new CurrentTrace(
                    sampler, first, currents(first, Math.min(CurrentTrace.MOST_SAMPLES, samples - first))));
        }
        return pass(100);
    }

    /** Arms and triggers {@code sampler}; nothing is ever heard of the trigger. */
    public CraftedDesk triggerUnheard(Sampler sampler) {
        return armed(sampler).act(new Act.Trigger(sampler)).passInSilence(6_000);
    }

    public CraftedDesk event(Event.Kind kind, Sampler sampler, int value) {
        events++;
        return hear(new Event(events, 12, millis, kind, sampler, lastOrder, Reason.NONE, value));
    }

    public CraftedDesk turned(Sampler sampler, SamplerState next) {
        states.set(sampler.ordinal(), next);
        return hearStatus();
    }

    public CraftedDesk feed(Stimulus stimulus) {
        Desk.Step step = Desk.fold(state, now(), stimulus);
        state = step.state();
        for (Effect effect : step.effects()) {
            if (effect instanceof Effect.Send send && send.orderId() != 0) {
                lastOrder = send.orderId();
            }
        }
        return this;
    }

    public CraftedDesk hear(Downlink message) {
        return feed(new Stimulus.Heard(MessageCodec.encode(message, PAYLOAD, 0, millis), message));
    }

    private CraftedDesk hearStatus() {
        return hear(new Status(
                SESSION,
                states,
                9_000,
                permissivesMet,
                events,
                0,
                0,
                0,
                0,
                0,
                12,
                new Readings(12_100, 150, tiltTenths, 20, 5, 143, 9_960, 40, 450, Readings.ABSENT, 9, switches)));
    }

    /** An inrush, a dry stretch, then the pump primed. */
    private static List<Integer> currents(int first, int count) {
        List<Integer> milliamps = new ArrayList<>();
        for (int i = first; i < first + count; i++) {
            int steady = i < 200 ? 650 : 1_100;
            milliamps.add(i < 20 ? 4_000 - 150 * i : steady + (i * 37) % 40);
        }
        return milliamps;
    }

    private Moment now() {
        return new Moment(millis * 1_000_000, 1_777_881_600_000L + millis);
    }
}
