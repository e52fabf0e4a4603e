package ouzel.simulator.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.frame.FrameParser;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.session.NonceSource;
import ouzel.protocol.session.PairingKey;
import ouzel.protocol.session.PayloadSession;
import ouzel.protocol.session.Verdict;
import ouzel.simulator.controller.BootCause;
import ouzel.simulator.controller.Controller;
import ouzel.simulator.controller.Limits;
import ouzel.simulator.controller.NonVolatile;
import ouzel.simulator.plant.Outputs;
import ouzel.simulator.plant.PayloadProfile;
import ouzel.simulator.plant.Plant;
import ouzel.simulator.plant.Sensed;
import ouzel.simulator.plant.Truth;

/**
 * A whole payload that isn't there: link, controller and plant under a simulated pilot, in steps of 10 ms.
 *
 * <p>It speaks bytes, exactly as a real one would, and can lose its power at any instant; what its controller keeps
 * through that is kept. The same object is stepped in virtual time by tests and by the clock when it is flown live.
 *
 * <p><b>Thread:</b> one at a time.
 */
public final class SimulatedPayload {
    /** Length of a step, ms. */
    public static final int STEP_MILLIS = Plant.STEP_MILLIS;

    /**
     * What makes this payload.
     *
     * @param number its number on the line, 1 to 65 535
     * @param profile its parts
     * @param seed what makes this unit differ from its profile
     * @param key its pairing key
     * @param capabilities bits of {@link Capability}: what is fitted and what is measured
     * @param randomness 64 unpredictable bits a call, for tokens and nonces
     */
    public record Build(
            int number, PayloadProfile profile, long seed, PairingKey key, int capabilities, LongSupplier randomness) {}

    private final Build build;
    private final Pilot pilot;
    private final Plant plant;
    private final NonVolatile memory = new NonVolatile(Limits.factorySettings());
    private final FrameParser parser = new FrameParser();
    private final List<Frame> spoken = new ArrayList<>();

    private Controller controller;
    private PayloadSession session;
    private boolean powered = true;
    private long upMillis;
    private int sequence;
    private long reloadedUpTo;

    /** A payload that has just been switched on, in the pilot's hands. */
    public SimulatedPayload(Build build, Pilot pilot) {
        this.build = build;
        this.pilot = pilot;
        this.plant = new Plant(build.profile(), build.seed());
        start(BootCause.POWER);
    }

    /** The same, whose clock shows {@code upMillis} already: 32 bits of it go on the wire and wrap after 50 days. */
    public SimulatedPayload(Build build, Pilot pilot, long upMillis) {
        this(build, pilot);
        this.upMillis = upMillis;
    }

    /** A payload with everything fitted, for a rehearsal at {@code site}, which all follows from {@code seed}. */
    public static Build reference(PayloadProfile profile, long seed, PairingKey key, LongSupplier randomness) {
        return new Build(7, profile, seed, key, Capability.all(), randomness);
    }

    /** Bytes that came in over the line; whole frames, pieces or noise. */
    public void hear(byte[] bytes) {
        if (powered) {
            parser.feed(bytes, this::hear);
        }
    }

    /** One frame that came in over the line. */
    public void hear(Frame frame) {
        if (!powered) {
            return;
        }
        Verdict verdict = session.hear(frame);
        if (verdict instanceof Verdict.Verified verified) {
            controller.accept(verified.envelope(), upMillis);
        } else if (verdict instanceof Verdict.Reply reply) {
            say(reply.message());
        } else if (verdict instanceof Verdict.Opened opened) {
            controller.sessionOpened(opened.session(), upMillis);
        }
        controller.framesRefused(session.refusedFrames());
    }

    /** Moves everything on by one step. */
    public void step() {
        Outputs outputs = powered ? controller.outputs() : Outputs.OFF;
        Sensed sensed = plant.step(outputs, pilot.step(STEP_MILLIS));
        if (!powered) {
            return;
        }
        upMillis += STEP_MILLIS;
        controller.step(upMillis, sensed);
        for (Optional<Downlink> message = controller.poll(); message.isPresent(); message = controller.poll()) {
            say(message.get());
        }
    }

    /** The frames spoken since the last call, oldest first. */
    public List<Frame> takeFrames() {
        List<Frame> taken = List.copyOf(spoken);
        spoken.clear();
        return taken;
    }

    /** The same as bytes for a line, one array a frame. */
    public List<byte[]> takeBytes() {
        return takeFrames().stream().map(FrameEncoder::encode).toList();
    }

    /** Takes the power away; every output is off from here on. */
    public void cutPower() {
        powered = false;
        spoken.clear();
    }

    /** Starts the controller again over what its memory kept. */
    public void restart(BootCause cause) {
        powered = true;
        parser.reset();
        start(cause);
    }

    /** The pilot who carries it. */
    public Pilot pilot() {
        return pilot;
    }

    /** The parts, to break or mend them. */
    public Plant plant() {
        return plant;
    }

    /** What really is on board. */
    public Truth truth() {
        return plant.truth();
    }

    /** True if the container or probe of {@code sampler} has been used and not been changed since. */
    public boolean isUsed(Sampler sampler) {
        return memory.use(sampler).isUsed();
    }

    /** True while a draw or stroke is under way. */
    public boolean isActing() {
        return memory.acting().isPresent();
    }

    /** What is driven now. */
    public Outputs outputs() {
        return powered ? controller.outputs() : Outputs.OFF;
    }

    private void start(BootCause cause) {
        upMillis = 0;
        controller = new Controller(memory, Limits.standard(), build.randomness(), build.capabilities(), cause);
        session = new PayloadSession(
                build.key(), build.number(), new NonceSource(memory.bootCount(), build.randomness()));
    }

    private void say(Downlink message) {
        if (message instanceof Event event && event.kind() == Event.Kind.RELOADED && event.number() > reloadedUpTo) {
            // What the operator records, a person has done: the fresh jar, bag or tip is in the plant from here on.
            reloadedUpTo = event.number();
            plant.reload(event.sampler());
        }
        spoken.add(MessageCodec.encode(message, build.number(), sequence, upMillis & 0xFFFF_FFFFL));
        sequence = (sequence + 1) & 0xFFFF;
    }
}
