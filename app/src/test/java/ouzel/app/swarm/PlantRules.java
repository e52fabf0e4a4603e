package ouzel.app.swarm;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.ChangeSettings;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Reload;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Settings;
import ouzel.protocol.message.Stop;
import ouzel.protocol.message.Trigger;
import ouzel.simulator.plant.Truth;

/** What must hold in the plant after every step, judged by what the payload was given and nothing it believes. */
final class PlantRules implements Witness.Listener {
    private static final Sampler[] SAMPLERS = Sampler.values();
    private static final int STEP = 10;
    private static final int SAFE_ALL_MILLIS = 50;
    private static final int SILENCE_MILLIS = 1_500;
    private static final int LONGEST_LIFE_MILLIS = 10_000;
    private static final int LATEST_START_MILLIS = 2_000;
    private static final int HAZARDOUS_AHEAD_MILLIS = 2_500;
    private static final int OTHER_AHEAD_MILLIS = 12_000;
    private static final int UNPRIMED_MILLIS = 8_200;
    /** Greatest doses of the reference payload, whatever its settings: mL, mL, ms. */
    private static final int[] DOSE_CEILINGS = {400, 680, 500};

    /** A token that was granted and whether it still lives is judged by time alone. */
    private record Grant(long orderId, Arm order, long token, long atMillis, int lifeMillis) {}

    /** A trigger that came in this step while its token lived: what comes after it in the step undoes nothing. */
    private record Cause(long orderId, Sampler sampler, Grant token) {}

    private final Scene scene;
    private final Uplink uplink;
    private final List<Cause> causes = new ArrayList<>();
    private final Set<Long> startedIds = new HashSet<>();
    private final Set<Long> stoppedAtOnce = new HashSet<>();
    private final Set<Long> carriedOut = new HashSet<>();
    private final Map<Long, Arm> arms = new HashMap<>();
    private final boolean[] used = new boolean[SAMPLERS.length];
    private final boolean[] on = new boolean[SAMPLERS.length];
    private final long[] onSince = new long[SAMPLERS.length];
    private final long[] onBefore = new long[SAMPLERS.length];
    private final long[] mostMillis = new long[SAMPLERS.length];
    private final List<Settings> settings = new ArrayList<>();
    private Optional<Grant> grant = Optional.empty();
    private long safeAllMillis = Long.MIN_VALUE / 2;
    private long newestSafeAll;
    private long heardMillis;
    private boolean stroked;
    private int starts;

    PlantRules(Scene scene, Uplink uplink, Settings factory) {
        this.scene = scene;
        this.uplink = uplink;
        settings.add(factory);
    }

    /** Order ids that have started something, each once. */
    Set<Long> startedIds() {
        return startedIds;
    }

    /** Order ids of triggers that were stopped in the step in which they came: nothing moved. */
    Set<Long> stoppedAtOnce() {
        return stoppedAtOnce;
    }

    /** How often a pump or the valve was switched on. */
    int starts() {
        return starts;
    }

    long silenceMillis() {
        return scene.nowMillis() - heardMillis;
    }

    boolean isOn(Sampler sampler) {
        return on[sampler.ordinal()];
    }

    boolean isUsed(Sampler sampler) {
        return used[sampler.ordinal()];
    }

    long safeAllMillis() {
        return safeAllMillis;
    }

    void restarted() {
        grant = Optional.empty();
        newestSafeAll = 0;
    }

    @Override
    public void sessionOpened() {
        grant = Optional.empty();
        if (settings.stream().anyMatch(held -> !held.waterFinishesAlone() || !held.airFinishesAlone())) {
            // What began in this very step may not finish alone, and then has moved nothing.
            causes.forEach(cause -> stoppedAtOnce.add(cause.orderId()));
        }
        newestSafeAll = 0;
        heardMillis = scene.nowMillis();
    }

    @Override
    public void forged() {
        // Nothing may come of it: the rules below know no such order.
    }

    @Override
    public void given(Given given) {
        int ahead = (int) (given.expiresAtMillis() - scene.clockMillis());
        int most = given.order().isHazardous() ? HAZARDOUS_AHEAD_MILLIS : OTHER_AHEAD_MILLIS;
        boolean isTimely = ahead >= 0 && ahead <= most;
        if (isTimely) {
            heardMillis = scene.nowMillis();
        }
        if (given.order() instanceof SafeAll && given.counter() > newestSafeAll) {
            newestSafeAll = given.counter();
            safeAllMillis = scene.nowMillis();
            grant = Optional.empty();
            stopAtOnce(sampler -> true);
        } else if (given.order() instanceof Stop stop && isFirst(given)) {
            grant = grant.filter(held -> held.order().sampler() != stop.sampler());
            stopAtOnce(stop.sampler()::equals);
        } else if (isTimely) {
            timely(given);
        }
    }

    private void stopAtOnce(Predicate<Sampler> which) {
        causes.stream()
                .filter(cause -> which.test(cause.sampler()))
                .forEach(cause -> stoppedAtOnce.add(cause.orderId()));
        causes.removeIf(cause -> which.test(cause.sampler()));
    }

    /** A repeated order is not carried out again; one without an id cannot be told from its repetition. */
    private boolean isFirst(Given given) {
        return given.orderId() == 0 || carriedOut.add(given.orderId());
    }

    private void timely(Given given) {
        if (given.order() instanceof Trigger trigger) {
            boolean isNew = given.orderId() != 0 && !startedIds.contains(given.orderId());
            grant.filter(held -> isNew && isHeld(held, trigger))
                    .ifPresent(held -> causes.add(new Cause(given.orderId(), trigger.sampler(), held)));
        } else if (given.order() instanceof Arm arm) {
            arms.putIfAbsent(given.orderId(), arm);
        } else if (given.order() instanceof Reload reload && isFirst(given)) {
            used[reload.sampler().ordinal()] = false;
        } else if (given.order() instanceof ChangeSettings change) {
            settings.add(change.settings());
        }
    }

    void said(Settings now) {
        settings.clear();
        settings.add(now);
    }

    void said(Outcome outcome) {
        if (outcome.token() == 0) {
            return;
        }
        Optional<Arm> order = Optional.ofNullable(arms.get(outcome.orderId()));
        boolean isAnswer = grant.filter(held -> held.token() == outcome.token()).isPresent();
        scene.holds(order.isPresent(), "armed by an authentic order only", outcome);
        if (!isAnswer) {
            granted(outcome, order.get());
        }
    }

    private void granted(Outcome outcome, Arm arm) {
        long now = scene.nowMillis();
        grant = Optional.of(new Grant(outcome.orderId(), arm, outcome.token(), now, outcome.tokenLifeMillis()));
        scene.holds(outcome.tokenLifeMillis() <= LONGEST_LIFE_MILLIS, "a token lives ten seconds at most", outcome);
        scene.holds(!isUsed(arm.sampler()), "used stays used", "armed again: " + arm);
        int dose = settings.stream()
                .mapToInt(held -> held.doseLimit(arm.sampler()))
                .max()
                .orElseThrow();
        int most = Math.min(dose, DOSE_CEILINGS[arm.sampler().ordinal()]);
        scene.holds(arm.dose() <= most, "limits are held on board", arm + " over " + most);
        scene.permissives().heldToArm(arm.sampler());
    }

    /** The token that the order of {@code armId} was granted is void; a later one is not. */
    void disarmed(long armId) {
        grant = grant.filter(held -> held.orderId() != armId);
    }

    /** The step is over; {@code truth} is what it did. */
    void stepped(Truth truth) {
        long[] onMillis = {
            truth.water().onMillis(), truth.air().onMillis(), truth.soil().valveOnMillis()
        };
        int running = 0;
        for (Sampler sampler : SAMPLERS) {
            int index = sampler.ordinal();
            boolean driven = onMillis[index] > onBefore[index];
            if (driven && !on[index]) {
                started(sampler);
            }
            on[index] = driven;
            onBefore[index] = onMillis[index];
            running += driven ? 1 : 0;
            if (driven) {
                runs(sampler);
            }
        }
        scene.holds(running <= 1, "one sampler at a time", running + " outputs on");
        if (scene.permissives().isPlugOut()) {
            // The payload starts and stops, but no current flows.
            stopAtOnce(sampler -> true);
        }
        causes.clear();
    }

    private void started(Sampler sampler) {
        Optional<Cause> cause =
                causes.stream().filter(given -> given.sampler() == sampler).findFirst();
        scene.holds(cause.isPresent(), "nothing starts without its own trigger", sampler);
        long id = cause.get().orderId();
        starts++;
        startedIds.add(id);
        scene.holds(!isUsed(sampler), "used stays used", sampler + " started again");
        long since = uplink.firstSent(id).map(at -> scene.nowMillis() - at).orElse(0L);
        scene.holds(since <= LATEST_START_MILLIS + STEP, "nothing starts late", sampler + " after " + since + " ms");
        boolean vented = sampler == Sampler.AIR && stroked;
        scene.holds(!vented, "permissives hold at the start", "air drawn after gas was vented");
        scene.permissives().heldToStart(sampler);
        stroked |= sampler == Sampler.SOIL;
        used[sampler.ordinal()] = true;
        onSince[sampler.ordinal()] = scene.nowMillis();
        mostMillis[sampler.ordinal()] = longest(sampler, cause.get().token().order());
        grant = Optional.empty();
    }

    private boolean isHeld(Grant held, Trigger trigger) {
        return held.token() == trigger.token()
                && held.order().sampler() == trigger.sampler()
                && scene.nowMillis() - held.atMillis() <= held.lifeMillis() + STEP;
    }

    private long longest(Sampler sampler, Arm arm) {
        long most = 0;
        for (Settings held : settings) {
            long flow = sampler == Sampler.WATER ? held.waterFlow() : held.airFlow();
            long limit = sampler == Sampler.WATER ? held.waterRunLimitMillis() : held.airRunLimitMillis();
            long byDose = UNPRIMED_MILLIS + arm.dose() * 100_000L / Math.max(1, flow);
            most = Math.max(most, sampler == Sampler.SOIL ? arm.dose() : Math.min(limit, byDose));
        }
        return most + 2 * STEP;
    }

    private void runs(Sampler sampler) {
        int index = sampler.ordinal();
        long now = scene.nowMillis();
        long ran = now - onSince[index] + STEP;
        scene.holds(ran <= mostMillis[index], "limits are held on board", sampler + " ran " + ran + " ms");
        boolean since = onSince[index] < safeAllMillis || safeAllMillis == onSince[index];
        scene.holds(
                !since || now - safeAllMillis <= SAFE_ALL_MILLIS,
                "off within 50 ms of a safe-all",
                sampler + " still on after " + (now - safeAllMillis) + " ms");
        boolean mayFinish = sampler == Sampler.SOIL
                || settings.stream()
                        .anyMatch(
                                held -> sampler == Sampler.WATER ? held.waterFinishesAlone() : held.airFinishesAlone());
        scene.holds(
                mayFinish || silenceMillis() <= SILENCE_MILLIS + 2 * STEP,
                "silence ends a draw that may not finish alone",
                sampler + " after " + silenceMillis() + " ms");
    }
}
