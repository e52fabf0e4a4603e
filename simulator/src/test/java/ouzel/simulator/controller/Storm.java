package ouzel.simulator.controller;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Readings.Switch;
import ouzel.protocol.message.Reload;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Status;
import ouzel.protocol.message.Stop;
import ouzel.protocol.message.Trigger;
import ouzel.protocol.session.Envelope;
import ouzel.simulator.plant.Outputs;

/**
 * Random orders, repeats, delays, silences, restarts and weather against one controller; what must always hold is
 * asserted after every step of 10 ms.
 */
final class Storm {
    private static final Sampler[] SAMPLERS = Sampler.values();

    private final Bench bench = new Bench();
    private final SplittableRandom random;
    private final List<Envelope> sent = new ArrayList<>();
    private final Map<Sampler, Long> tokens = new HashMap<>();
    private final int[] switchedOn = new int[SAMPLERS.length];
    private final Map<Long, Integer> startsOfOrder = new HashMap<>();
    private final int[] startsOf = new int[SAMPLERS.length];
    private final long[] onSinceMillis = new long[SAMPLERS.length];
    private Outputs before = Outputs.OFF;
    private long nextOrderId = 1;

    Storm(long seed) {
        random = new SplittableRandom(seed);
        bench.world.afloat();
        bench.settle();
        check();
    }

    /** Lets {@code acts} random things happen. */
    Storm rage(int acts) {
        for (int i = 0; i < acts; i++) {
            act();
            check();
            run(random.nextInt(1, 60));
        }
        return this;
    }

    /** How often an output was switched on. */
    int switchings() {
        return switchedOn[0] + switchedOn[1] + switchedOn[2];
    }

    private void act() {
        Sampler sampler = SAMPLERS[random.nextInt(SAMPLERS.length)];
        switch (random.nextInt(16)) {
            case 0, 1, 2, 3 -> arm(sampler);
            case 4, 5, 6 -> send(new Trigger(sampler, tokens.getOrDefault(sampler, random.nextLong())));
            case 7 -> send(new Stop(sampler));
            case 8 -> send(new SafeAll());
            case 9, 10 -> send(new Reload(sampler));
            case 11, 12 -> repeat();
            case 13 -> bench.consoleIsThere = random.nextInt(4) != 0;
            case 14 -> weather();
            default -> restartOrReopen();
        }
    }

    private void arm(Sampler sampler) {
        makeReady(sampler);
        run(random.nextInt(10) == 0 ? 50 : 350);
        send(new Arm(sampler, random.nextInt(1, 700), 0));
        Outcome last = bench.lastOutcome();
        if (last.token() != 0) {
            tokens.put(sampler, last.token());
            triggerSoon(sampler, last.token());
        }
    }

    private void triggerSoon(Sampler sampler, long token) {
        if (random.nextInt(4) != 0) {
            run(random.nextInt(20));
            send(new Trigger(sampler, token));
        }
    }

    private void makeReady(Sampler sampler) {
        boolean wet = sampler == Sampler.WATER;
        bench.world.set(Switch.FLOAT_A, wet).set(Switch.FLOAT_B, wet).set(Switch.INTAKE, wet);
        bench.world.set(Switch.FLOAT_C, wet).set(Switch.LEGS, !wet);
    }

    private void send(Order order) {
        Envelope envelope = new Envelope(1, nextOrderId++, bench.now + random.nextInt(200, 2_500), order);
        sent.add(envelope);
        deliver(envelope);
    }

    private void deliver(Envelope envelope) {
        bench.deliver(envelope);
        if (envelope.order() instanceof SafeAll) {
            holds(bench.controller.outputs().isAllOff(), "all off after safe-all", bench.controller.outputs());
        }
    }

    /** An order comes again, soon or late, in any order. */
    private void repeat() {
        int newest = sent.size();
        for (int i = random.nextInt(4); i > 0 && newest > 0; i--) {
            deliver(sent.get(Math.max(0, newest - 1 - random.nextInt(6))));
            check();
        }
    }

    private void weather() {
        bench.world.tiltTenths = random.nextInt(8) == 0 ? 400 : 20;
        bench.world.waterMilliamps = random.nextInt(8) == 0 ? 0 : World.WATER_WET_MILLIAMPS;
        bench.world.probeNeverReturns = random.nextInt(8) == 0;
        bench.world.set(Switch.PLUG, random.nextInt(8) != 0);
    }

    private void restartOrReopen() {
        if (random.nextInt(3) == 0) {
            bench.restart(BootCause.values()[random.nextInt(3)]);
            bench.controller.sessionOpened(random.nextInt(1, 1_000), bench.now);
            before = Outputs.OFF;
        } else {
            bench.controller.sessionOpened(random.nextInt(1, 1_000), bench.now);
            bench.outputs = bench.controller.outputs();
        }
    }

    private void run(int steps) {
        for (int i = 0; i < steps; i++) {
            bench.run(Controller.STEP_MILLIS);
            check();
        }
    }

    private void check() {
        Outputs driven = bench.outputs;
        boolean[] now = {driven.waterPump(), driven.airPump(), driven.soilValve()};
        boolean[] then = {before.waterPump(), before.airPump(), before.soilValve()};
        countStarts();
        for (Sampler sampler : SAMPLERS) {
            int index = sampler.ordinal();
            if (now[index] && !then[index]) {
                switchedOn[index]++;
                onSinceMillis[index] = bench.now;
            }
            holds(switchedOn[index] <= startsOf[index], "switched on once for each start", sampler);
            holds(!now[index] || bench.now - onSinceMillis[index] <= 60_000, "off after its longest run", sampler);
            holds(!now[index] || isActing(sampler), "driven only by its own act", sampler);
        }
        before = driven;
    }

    private void countStarts() {
        for (Event event : bench.said(Event.class)) {
            boolean start = event.kind() == Event.Kind.DRAW_STARTED || event.kind() == Event.Kind.STROKE_STARTED;
            if (start && startsOfOrder.put(event.orderId(), 1) == null) {
                startsOf[event.sampler().ordinal()]++;
            }
        }
        bench.said(Status.class).forEach(Storm::checkStatus);
        bench.said.removeIf(message -> !(message instanceof Outcome));
        if (bench.said.size() > 200) {
            bench.said.subList(0, 100).clear();
        }
    }

    private boolean isActing(Sampler sampler) {
        return bench.memory
                .acting()
                .filter(acting -> acting.sampler() == sampler)
                .isPresent();
    }

    private static void checkStatus(Status status) {
        long active = status.states().stream()
                .filter(state -> state == SamplerState.ARMED || state.isActing())
                .count();
        holds(active <= 1, "at most one armed or acting", status.states());
    }

    private static void holds(boolean condition, String what, Object where) {
        if (!condition) {
            throw new AssertionError(what + " : " + where);
        }
    }
}
