package ouzel.app.swarm;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Settings;
import ouzel.protocol.message.Status;

/** All that the payload has said, and what must hold of its words. */
final class Account {
    private static final int STEP = 10;

    private final Scene scene;
    private final PlantRules plant;
    private final Map<Long, Event> events = new HashMap<>();
    private final Map<Long, Long> statusMillis = new HashMap<>();
    private final Map<Long, Event> starts = new HashMap<>();
    private final Map<Long, Event> ends = new HashMap<>();
    private final Set<Long> completed = new HashSet<>();
    private final Set<Long> answered = new HashSet<>();
    private Optional<Status> newest = Optional.empty();
    private Optional<Sampler> live = Optional.empty();
    private long armedMillis = Long.MIN_VALUE / 2;
    private int forged;
    private int boots = 1;
    private int strokesCompleted;

    Account(Scene scene, PlantRules plant) {
        this.scene = scene;
        this.plant = plant;
    }

    void restarted() {
        boots++;
        forged = 0;
        live = Optional.empty();
    }

    void forged() {
        forged++;
    }

    int boots() {
        return boots;
    }

    Map<Long, Event> events() {
        return events;
    }

    Map<Long, Event> starts() {
        return starts;
    }

    Map<Long, Event> ends() {
        return ends;
    }

    Optional<Status> newest() {
        return newest;
    }

    /** True if the payload has said that the order of {@code id} is complete. */
    boolean hasCompleted(long id) {
        return completed.contains(id);
    }

    /** True if the payload has said what became of the order of {@code id} in the end. */
    boolean hasAnswered(long id) {
        return answered.contains(id);
    }

    /** When the payload said the status of one start at one time of its clock. */
    Optional<Long> saidAt(int bootCount, long clockMillis) {
        return Optional.ofNullable(statusMillis.get((long) bootCount << 32 | clockMillis));
    }

    void said(Downlink message, long clockMillis) {
        if (message instanceof Status status) {
            status(status, clockMillis);
        } else if (message instanceof Event event) {
            event(event);
        } else if (message instanceof Outcome outcome) {
            outcome(outcome);
        } else if (message instanceof Settings settings) {
            plant.said(settings);
        }
    }

    private void outcome(Outcome outcome) {
        plant.said(outcome);
        boolean bad = outcome.stage() == Outcome.Stage.REFUSED || outcome.stage() == Outcome.Stage.FAILED;
        scene.holds(!bad || outcome.reason() != Reason.NONE, "every refusal names its reason", outcome);
        boolean named = outcome.reason() != Reason.PERMISSIVE || outcome.permissive() != Outcome.NO_PERMISSIVE;
        scene.holds(named, "every refusal names its reason", outcome);
        if (outcome.stage().isFinal()) {
            answered.add(outcome.orderId());
        }
        if (outcome.stage() == Outcome.Stage.COMPLETED) {
            completed.add(outcome.orderId());
        }
    }

    private void event(Event event) {
        Event known = events.putIfAbsent(event.number(), event);
        scene.holds(known == null || known.equals(event), "an event never changes", known + " became " + event);
        if (known != null) {
            return;
        }
        boolean isOfThisStart = event.bootCount() == boots;
        if (isOfThisStart) {
            live(event);
        }
        switch (event.kind()) {
            case ARMED -> armedMillis = isOfThisStart ? scene.nowMillis() : armedMillis;
            case DRAW_STARTED, STROKE_STARTED -> once(starts, event);
            case DRAW_COMPLETED -> complete(event);
            case STROKE_COMPLETED -> {
                strokesCompleted++;
                complete(event);
            }
            case DRAW_ENDED_EARLY, STROKE_FAILED -> once(ends, event);
            case RELOADED -> completed.add(event.orderId());
            case BOOTED, SESSION_OPENED, DISARMED, FAULT, SAFED, SETTINGS_CHANGED, KEEP_ALIVE_LOST, EVENTS_DROPPED -> {
                // Nothing follows from these here.
            }
        }
    }

    /** Who is armed or acts, by the events of this start in their order: the shortest overlap shows here. */
    private void live(Event event) {
        Optional<Sampler> own = Optional.of(event.sampler());
        switch (event.kind()) {
            case ARMED, DRAW_STARTED, STROKE_STARTED -> {
                scene.holds(live.isEmpty() || live.equals(own), "one sampler at a time", event + " beside " + live);
                live = own;
            }
            case DISARMED -> {
                plant.disarmed(event.orderId());
                live = Optional.empty();
            }
            case DRAW_COMPLETED, DRAW_ENDED_EARLY, STROKE_COMPLETED, STROKE_FAILED -> live = Optional.empty();
            case BOOTED, SESSION_OPENED, FAULT, SAFED, RELOADED, SETTINGS_CHANGED, KEEP_ALIVE_LOST, EVENTS_DROPPED -> {
                // Nobody is armed by these.
            }
        }
    }

    private void complete(Event event) {
        once(ends, event);
        completed.add(event.orderId());
        scene.holds(plant.startedIds().contains(event.orderId()), "nothing completes that did not start", event);
    }

    private void once(Map<Long, Event> kept, Event event) {
        answered.add(event.orderId());
        scene.holds(kept.put(event.orderId(), event) == null, "every start and end is told once", event);
    }

    int strokesCompleted() {
        return strokesCompleted;
    }

    private void status(Status status, long clockMillis) {
        statusMillis.put((long) status.bootCount() << 32 | clockMillis, scene.nowMillis());
        scene.holds(status.bootCount() == boots, "a restart counts", status.bootCount() + " of " + boots);
        scene.holds(
                status.refusedFrames() >= forged, "forged frames are counted", status.refusedFrames() + "/" + forged);
        int live = 0;
        for (Sampler sampler : Sampler.values()) {
            SamplerState state = status.state(sampler);
            live += state == SamplerState.ARMED || state.isActing() ? 1 : 0;
            boolean fresh = state == SamplerState.SAFE || state == SamplerState.ARMED;
            scene.holds(!(fresh && plant.isUsed(sampler)), "used stays used", sampler + " " + state);
            if (state == SamplerState.ARMED) {
                armed(sampler);
            }
        }
        scene.holds(live <= 1, "one sampler at a time", status.states());
        newest = Optional.of(status);
    }

    private void armed(Sampler sampler) {
        long silence = plant.silenceMillis();
        scene.holds(silence <= 1_500 + STEP, "silence disarms", sampler + " armed after " + silence + " ms");
        boolean pumps = plant.isOn(Sampler.WATER) || plant.isOn(Sampler.AIR);
        scene.holds(sampler != Sampler.SOIL || !pumps, "soil is never armed while a pump runs", sampler);
        boolean since = armedMillis < plant.safeAllMillis() && scene.nowMillis() - plant.safeAllMillis() > 50;
        scene.holds(!since, "safe-all disarms", sampler + " armed since " + armedMillis);
        scene.holds(scene.nowMillis() - armedMillis <= 10_000 + STEP, "a token lives ten seconds at most", sampler);
    }
}
