package ouzel.simulator.controller;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.KeepAlive;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Settings;
import ouzel.protocol.message.Status;
import ouzel.protocol.message.Trigger;
import ouzel.protocol.session.Envelope;
import ouzel.simulator.plant.Outputs;

/** A controller on the bench: its world made by hand, its clock turned by hand, its console a list of orders. */
final class Bench {
    static final int WATER_DOSE = 200;
    static final int AIR_DOSE = 500;
    static final int STROKE_DOSE = 120;
    private static final int LIFE_MILLIS = 2_000;

    final World world = new World();
    final List<Downlink> said = new ArrayList<>();
    final NonVolatile memory;
    final int capabilities;
    Controller controller;
    Outputs outputs = Outputs.OFF;
    long now;
    boolean consoleIsThere = true;
    private final SplittableRandom tokens = new SplittableRandom(7);
    private long nextOrderId = 100;
    private long counter;

    Bench() {
        this(Capability.all());
    }

    Bench(int capabilities) {
        this(capabilities, new NonVolatile(settings()));
    }

    Bench(int capabilities, NonVolatile memory) {
        this.capabilities = capabilities;
        this.memory = memory;
        restart(BootCause.POWER);
    }

    /** The workshop's settings, but that the air draw stops when the console is lost: both policies are tested. */
    static Settings settings() {
        Settings factory = Limits.factorySettings();
        return new Settings(
                factory.waterDoseLimit(),
                factory.airDoseLimit(),
                factory.strokeLimitMillis(),
                factory.waterRunLimitMillis(),
                factory.airRunLimitMillis(),
                factory.strokesPerCartridge(),
                factory.waterFlow(),
                factory.airFlow(),
                factory.armLifetimeMillis(),
                true,
                false);
    }

    /** A bench on which {@code sampler} could be armed. */
    static Bench readyFor(Sampler sampler) {
        Bench bench = new Bench();
        bench.world.readyFor(sampler);
        return bench.settle();
    }

    /** A bench on which {@code sampler} acts. */
    static Bench acting(Sampler sampler) {
        Bench bench = readyFor(sampler);
        bench.trigger(sampler, bench.arm(sampler));
        return bench;
    }

    Bench restart(BootCause cause) {
        controller = new Controller(memory, Limits.standard(), tokens::nextLong, capabilities, cause);
        outputs = controller.outputs();
        now = 0;
        said.addAll(controller.drain());
        return this;
    }

    /** Opens a session and lets every permissive prove itself. */
    Bench settle() {
        controller.sessionOpened(0xCAFE, now);
        return run(3_600);
    }

    Bench run(long millis) {
        for (long until = now + millis; now < until; ) {
            now += Controller.STEP_MILLIS;
            if (consoleIsThere && now % 300 == 0) {
                send(0, new KeepAlive());
            }
            outputs = controller.step(now, world.step(outputs));
            said.addAll(controller.drain());
        }
        return this;
    }

    /** Sends an order under a fresh id and gives the id. */
    long send(Order order) {
        send(nextOrderId, order);
        return nextOrderId++;
    }

    void send(long orderId, Order order) {
        deliver(new Envelope(++counter, orderId, now + LIFE_MILLIS, order));
    }

    void deliver(Envelope envelope) {
        controller.accept(envelope, now);
        outputs = controller.outputs();
        said.addAll(controller.drain());
    }

    static int dose(Sampler sampler) {
        return switch (sampler) {
            case WATER -> WATER_DOSE;
            case AIR -> AIR_DOSE;
            case SOIL -> STROKE_DOSE;
        };
    }

    /** Arms and gives the token. */
    long arm(Sampler sampler) {
        return outcome(send(new Arm(sampler, dose(sampler), 0))).token();
    }

    long trigger(Sampler sampler, long token) {
        return send(new Trigger(sampler, token));
    }

    /** The newest outcome said for an order. */
    Outcome outcome(long orderId) {
        return outcomes(orderId).stream()
                .reduce((first, second) -> second)
                .orElseThrow(() -> new AssertionError("no outcome for order " + orderId));
    }

    List<Outcome> outcomes(long orderId) {
        return said(Outcome.class).stream()
                .filter(outcome -> outcome.orderId() == orderId)
                .toList();
    }

    /** The last outcome said. */
    Outcome lastOutcome() {
        List<Outcome> all = said(Outcome.class);
        return all.get(all.size() - 1);
    }

    /** The reason an order to arm is refused for now. */
    Reason armRefusal(Sampler sampler) {
        return outcome(send(new Arm(sampler, dose(sampler), 0))).reason();
    }

    /** The permissive an order to arm is refused for now. */
    Optional<Permissive> unmet(Sampler sampler) {
        int code = outcome(send(new Arm(sampler, dose(sampler), 0))).permissive();
        return code == Outcome.NO_PERMISSIVE ? Optional.empty() : Optional.of(Permissive.values()[code]);
    }

    SamplerState state(Sampler sampler) {
        return status().state(sampler);
    }

    /** The status as of the next time it is said. */
    Status status() {
        run(100);
        List<Status> all = said(Status.class);
        return all.get(all.size() - 1);
    }

    /** Kinds of the events kept, oldest first. */
    List<Event.Kind> kinds() {
        return memory.events().kept().stream().map(Event::kind).toList();
    }

    List<Event> events(Event.Kind kind) {
        return memory.events().kept().stream()
                .filter(event -> event.kind() == kind)
                .toList();
    }

    <T extends Downlink> List<T> said(Class<T> type) {
        return said.stream().filter(type::isInstance).map(type::cast).toList();
    }
}
