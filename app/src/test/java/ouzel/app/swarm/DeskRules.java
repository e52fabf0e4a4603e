package ouzel.app.swarm;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Lane;
import ouzel.app.desk.Note;
import ouzel.app.desk.OrderTrack;
import ouzel.app.desk.OrderTrack.Stage;
import ouzel.app.desk.Phase;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Trigger;

/** What must hold of a desk: what it shows, what it claims, and what it sends. */
final class DeskRules {
    /** The desk's limit, and what a status may take through the air and between two ticks, ms. */
    private static final long OLDEST_FRESH_MILLIS = 1_000 + 250 + 350;

    private final Scene scene;
    private final Account account;
    private final int unmeasured;
    private final String secret;
    private final Map<String, Long> lastTrigger = new HashMap<>();

    DeskRules(Scene scene, Account account, int capabilities, String secret) {
        this.scene = scene;
        this.account = account;
        this.unmeasured = Capability.unmeasured(capabilities);
        this.secret = secret;
    }

    /** The desk has come through a step. */
    void stepped(DeskState desk) {
        // A laptop that stood still shows what it showed until its next tick.
        boolean isAwake = scene.nowMillis() - desk.now().nanos() / 1_000_000 <= 100;
        if (isAwake && desk.isLinkFresh()) {
            long age = age(desk);
            scene.holds(age <= OLDEST_FRESH_MILLIS, "stale is not fresh", "a status " + age + " ms old");
        }
        for (Lane lane : desk.lanes()) {
            boolean shows = lane.phase() != Phase.UNKNOWN;
            scene.holds(!shows || desk.isLinkFresh(), "stale is not fresh", lane.phase());
            Stream.of(lane.arm(), lane.trigger(), lane.other())
                    .flatMap(Optional::stream)
                    .forEach(this::claim);
        }
    }

    private long age(DeskState desk) {
        DeskState.StatusHeard heard = desk.status().orElseThrow();
        long said = account.saidAt(heard.status().bootCount(), heard.payloadMillis())
                .orElseThrow(() -> new Violation("the desk shows what was said", scene.nowMillis(), heard.toString()));
        return scene.nowMillis() - said;
    }

    private void claim(OrderTrack track) {
        boolean done = track.stage() == Stage.COMPLETED;
        scene.holds(!done || account.hasCompleted(track.orderId()), "completed is the payload's word", track);
        boolean bad = track.stage() == Stage.REFUSED || track.stage() == Stage.FAILED;
        scene.holds(!bad || !track.words().isBlank(), "every refusal names its reason", track);
    }

    /** Post {@code name} sends an arm or trigger order for the first time. */
    void sendsNew(String name, DeskState desk, Given given) {
        if (given.order() instanceof Arm arm) {
            opinion(desk, arm.sampler(), given);
        } else if (given.order() instanceof Trigger trigger) {
            opinion(desk, trigger.sampler(), given);
            Long former = lastTrigger.put(name + trigger.sampler(), given.orderId());
            boolean resolved = former == null || account.hasAnswered(former);
            scene.holds(resolved, "unknown blocks the next trigger", "after order " + former);
        }
    }

    private void opinion(DeskState desk, Sampler sampler, Given given) {
        String rule = "the console sends only what it believes safe";
        scene.holds(desk.status().isPresent(), rule, given + " without a status");
        scene.holds(age(desk) <= OLDEST_FRESH_MILLIS, rule, given + " on a status " + age(desk) + " ms old");
        int met = desk.status().get().status().permissivesMet() | unmeasured | Permissive.ALONE.bit();
        int needed = Permissive.bitsOf(sampler);
        scene.holds(
                (met & needed) == needed, rule, given + " with " + Integer.toBinaryString(needed & ~met) + " unmet");
    }

    /** The sortie is over: what is written down does not hold the key. */
    void ended(DeskState desk) {
        for (Note note : desk.notes()) {
            scene.holds(!note.sentence().contains(secret), "the key is in no record", note);
        }
    }
}
