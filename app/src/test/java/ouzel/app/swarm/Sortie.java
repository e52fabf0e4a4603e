package ouzel.app.swarm;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import ouzel.app.desk.Act;
import ouzel.app.desk.DeskState;
import ouzel.app.swarm.Happening.Occasion;
import ouzel.protocol.codec.Decoded;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.FrameEncoder;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Challenge;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Trigger;
import ouzel.protocol.session.PairingKey;
import ouzel.simulator.controller.BootCause;
import ouzel.simulator.controller.Limits;
import ouzel.simulator.plant.Fault;
import ouzel.simulator.plant.PayloadProfile;
import ouzel.simulator.plant.Truth;
import ouzel.simulator.radio.Weather;
import ouzel.simulator.rehearsal.Pilot;
import ouzel.simulator.rehearsal.SimulatedPayload;
import ouzel.simulator.rehearsal.Site;

/** One sortie in virtual time: two consoles, their radios, the payload and its plant, under all rules at each step. */
final class Sortie implements Witness.Listener {
    private static final int STEP = SimulatedPayload.STEP_MILLIS;
    private static final int LOOK_MILLIS = 100;
    /** After the chaos the link is good for this long at most, ms. */
    private static final int SETTLE_MILLIS = 30_000;
    /** A held trigger's repetitions are held for this long too, ms. */
    private static final int HELD_WITH_MILLIS = 2_200;
    /** A console that hears no answer for this long repeats its order, ms. */
    private static final int DEAF_MILLIS = 600;

    private record Due(long atMillis, long order, Happening happening) implements Comparable<Due> {
        @Override
        public int compareTo(Due other) {
            int byTime = Long.compare(atMillis, other.atMillis);
            return byTime != 0 ? byTime : Long.compare(order, other.order);
        }
    }

    private final Script script;
    private final Scene scene;
    private final Uplink uplink = new Uplink();
    private final PlantRules plantRules;
    private final Account account;
    private final DeskRules deskRules;
    private final Witness witness;
    private final SimulatedPayload payload;
    private final Pilot pilot = new Pilot(Site.QUARRY);
    private final List<Post> posts = new ArrayList<>();
    private final Crew crew = new Crew();
    private final byte[] secret = new byte[PairingKey.LENGTH];
    private final PriorityQueue<Due> agenda = new PriorityQueue<>();
    private final List<Happening.After> traps = new ArrayList<>();
    private final Set<Long> givenIds = new TreeSet<>();
    private Optional<Meddler> meddler = Optional.empty();
    private Weather weather = Weather.CLEAR;
    private long powerBackMillis = -1;
    private BootCause bootCause = BootCause.POWER;
    private boolean powered = true;
    private long holdUntil = -1;
    private int holdMillis;
    private Optional<Happening.Retell> retell = Optional.empty();
    private long retoldId;
    private boolean clashing;
    private long orders;

    Sortie(Script script, PayloadProfile profile) {
        this.script = script;
        SplittableRandom chance = new SplittableRandom(script.seed());
        chance.nextBytes(secret);
        PairingKey key = PairingKey.of(secret);
        scene = new Scene(script.build());
        plantRules = new PlantRules(scene, uplink, Limits.factorySettings());
        account = new Account(scene, plantRules);
        witness = new Witness(secret);
        deskRules = new DeskRules(scene, account, script.build().capabilities(), key.toString());
        SimulatedPayload.Build build = new SimulatedPayload.Build(
                Witness.PAYLOAD,
                profile,
                chance.nextLong(),
                key,
                script.build().capabilities(),
                chance.split()::nextLong);
        payload = new SimulatedPayload(build, pilot, script.build().clockMillis());
        for (int number = 0; number < 2; number++) {
            int post = number;
            posts.add(new Post(number, scene, key, chance.split(), frame -> sent(post, frame)));
        }
        script.lines().forEach(line -> plan(line.atMillis(), line.happening()));
    }

    /** Flies it; throws a {@link Violation} as soon as a rule is broken. */
    @SuppressWarnings("checkstyle:IllegalCatch")
    Flown fly() {
        try {
            posts.get(0).connect();
            while (scene.nowMillis() < script.chaosMillis()) {
                step();
            }
            settle();
            return new Flown(
                    plantRules.starts(), scene.nowMillis(), account.events().size());
        } catch (RuntimeException thrown) {
            throw new Violation(scene.nowMillis(), thrown);
        }
    }

    /**
     * What a sortie saw.
     *
     * @param starts how often a pump or the valve was switched on
     * @param millis flown time, ms
     * @param events events on board
     */
    record Flown(int starts, long millis, int events) {}

    private void plan(long atMillis, Happening happening) {
        agenda.add(new Due(atMillis, orders++, happening));
    }

    private void step() {
        scene.step(powered);
        if (!powered && scene.nowMillis() >= powerBackMillis) {
            restartPayload();
        }
        while (!agenda.isEmpty() && agenda.peek().atMillis() <= scene.nowMillis()) {
            happens(agenda.remove().happening());
        }
        lookOfTheCrew();
        giveAll();
        payload.step();
        scene.permissives().look(pilot, payload.plant().faults());
        payload.takeFrames().forEach(this::spoken);
        Truth truth = payload.truth();
        plantRules.stepped(truth);
        scene.holds(account.strokesCompleted() <= truth.soil().strokesStarted(), "completed means moved", truth.soil());
        meddler.ifPresent(third -> third.step(scene.nowMillis()));
        for (Post post : posts) {
            post.step();
            if (!post.isFrozen()) {
                deskRules.stepped(post.state());
            }
        }
    }

    private void lookOfTheCrew() {
        if (scene.nowMillis() % LOOK_MILLIS == 0 && scene.nowMillis() < script.chaosMillis()) {
            crew.look(posts.get(0).state(), scene.nowMillis()).forEach(posts.get(0)::act);
        }
    }

    private void giveAll() {
        for (Optional<byte[]> late = uplink.due(scene.nowMillis());
                late.isPresent();
                late = uplink.due(scene.nowMillis())) {
            give(late.get());
        }
        for (Post post : posts) {
            post.arriving().forEach(this::give);
        }
    }

    private void give(byte[] bytes) {
        if (powered) {
            witness.given(bytes, this);
        }
        payload.hear(bytes);
    }

    private void spoken(Frame frame) {
        byte[] bytes = FrameEncoder.encode(frame);
        posts.forEach(post -> post.spoken(bytes));
        if (!(MessageCodec.decode(frame) instanceof Decoded.Known known
                && known.message() instanceof Downlink message)) {
            throw new Violation("the payload says what can be read", scene.nowMillis(), frame.toString());
        }
        if (message instanceof Challenge challenge) {
            witness.said(challenge);
        }
        account.said(message, frame.header().timeMillis());
        meddler.ifPresent(third -> third.hears(message, frame.header().timeMillis()));
    }

    private void sent(int number, Frame frame) {
        Post post = posts.get(number);
        Optional<Given> order = Given.in(frame);
        boolean isNew = uplink.sent(frame, order, scene.nowMillis());
        byte[] bytes = FrameEncoder.encode(frame);
        boolean showsKey = contains(bytes, secret);
        scene.holds(
                !showsKey,
                "the key is in no record",
                "a frame of kind " + frame.header().kind());
        if (isNew) {
            deskRules.sendsNew(post.name(), post.state(), order.get());
            occurs(order.get().order(), Occasion.ARM_SENT, Occasion.TRIGGER_SENT);
        }
        boolean isTrigger = order.isPresent() && order.get().order() instanceof Trigger;
        if (isTrigger && isNew && holdMillis > 0) {
            holdUntil = scene.nowMillis() + HELD_WITH_MILLIS;
        }
        if (isNew && retell.filter(next -> next.kind() == frame.header().kind()).isPresent()) {
            retoldId = order.get().orderId();
            post.deafen(DEAF_MILLIS);
        }
        boolean isRetold = order.isPresent() && !isNew && order.get().orderId() == retoldId && retoldId != 0;
        if (clashing) {
            uplink.bring(bytes, scene.nowMillis());
        } else if (isRetold) {
            uplink.bring(bytes, scene.nowMillis() + retell.orElseThrow().millis());
            retoldId = 0;
            retell = Optional.empty();
        } else if (isTrigger && scene.nowMillis() < holdUntil) {
            uplink.bring(bytes, scene.nowMillis() + holdMillis);
        } else {
            post.sendThroughAir(bytes);
        }
    }

    /** True if half of the key stands in {@code bytes}. */
    private static boolean contains(byte[] bytes, byte[] secret) {
        int half = secret.length / 2;
        for (int at = 0; at + half <= bytes.length; at++) {
            if (java.util.Arrays.equals(bytes, at, at + half, secret, 0, half)) {
                return true;
            }
        }
        return false;
    }

    private void occurs(Order order, Occasion arm, Occasion trigger) {
        Optional<Occasion> occasion = order instanceof Arm
                ? Optional.of(arm)
                : order instanceof Trigger ? Optional.of(trigger) : Optional.empty();
        List<Happening.After> sprung = traps.stream()
                .filter(trap -> occasion.filter(trap.occasion()::equals).isPresent())
                .toList();
        traps.removeAll(sprung);
        sprung.forEach(trap -> plan(scene.nowMillis() + Math.max(STEP, trap.inMillis()), trap.then()));
    }

    @Override
    public void sessionOpened() {
        plantRules.sessionOpened();
    }

    @Override
    public void given(Given given) {
        plantRules.given(given);
        if (givenIds.add(given.orderId())) {
            occurs(given.order(), Occasion.ARM_GIVEN, Occasion.TRIGGER_GIVEN);
        }
    }

    @Override
    public void forged() {
        account.forged();
    }

    private void happens(Happening happening) {
        long now = scene.nowMillis();
        if (happening instanceof Happening.Push push) {
            posts.get(push.post()).act(push.act());
        } else if (happening instanceof Happening.After trap) {
            traps.add(trap);
        } else if (happening instanceof Happening.Sky sky) {
            sky(sky.weather());
        } else if (happening instanceof Happening.Silence silence) {
            Weather.Outage outage = new Weather.Outage(now, now + silence.millis());
            posts.forEach(post -> post.weather(weather.with(List.of(outage))));
        } else if (happening instanceof Happening.Again again) {
            uplink.again(again.kind(), again.back(), now + again.inMillis());
        } else if (happening instanceof Happening.Forge forge) {
            uplink.forge(forge.kind(), forge.back(), forge.bit(), now);
        } else if (happening instanceof Happening.HoldTriggers hold) {
            holdMillis = hold.millis();
        } else if (happening instanceof Happening.Retell next) {
            retell = Optional.of(next);
            retoldId = 0;
        } else if (happening instanceof Happening.Clash clash) {
            clash(clash);
        } else if (happening instanceof Happening.Meddle meddle) {
            meddler = Optional.of(new Meddler(meddle.seed(), secret, uplink));
        } else {
            happensToThings(happening);
        }
    }

    private void happensToThings(Happening happening) {
        if (happening instanceof Happening.Fly fly) {
            pilot.ask(fly.place());
        } else if (happening instanceof Happening.Strive strive) {
            crew.strive(strive.sampler());
        } else if (happening instanceof Happening.Break breaks) {
            payload.plant().fault(breaks.fault());
        } else if (happening instanceof Happening.Mend mends) {
            payload.plant().clear(mends.fault());
        } else if (happening instanceof Happening.Cut cut) {
            cutPower(cut);
        } else if (happening instanceof Happening.Restart restart) {
            posts.get(restart.post()).restart();
        } else if (happening instanceof Happening.Freeze freeze) {
            posts.get(freeze.post()).freeze(freeze.millis());
        } else if (happening instanceof Happening.SetClock set) {
            posts.get(set.post()).setClock(set.byMillis());
        } else if (happening instanceof Happening.TakeOver takes) {
            posts.get(takes.post()).takeOver();
        }
    }

    private void sky(Weather next) {
        weather = next;
        posts.forEach(post -> post.weather(next));
    }

    private void clash(Happening.Clash clash) {
        clashing = true;
        List<Act> acts = clash.safeAllFirst()
                ? List.of(new Act.SafeAll(), new Act.Trigger(clash.sampler()))
                : List.of(new Act.Trigger(clash.sampler()), new Act.SafeAll());
        acts.forEach(posts.get(0)::act);
        clashing = false;
    }

    private void cutPower(Happening.Cut cut) {
        payload.cutPower();
        powered = false;
        powerBackMillis = scene.nowMillis() + cut.offMillis();
        bootCause = cut.cause();
        witness.restarted();
        plantRules.restarted();
    }

    private void restartPayload() {
        payload.restart(bootCause);
        powered = true;
        scene.clockStarts();
        account.restarted();
    }

    /** Everything that happens has happened: the link is good, the crew makes all safe, and the records must meet. */
    private void settle() {
        agenda.clear();
        traps.clear();
        meddler = Optional.empty();
        holdMillis = 0;
        retell = Optional.empty();
        retoldId = 0;
        sky(Weather.CLEAR);
        EnumSet.allOf(Fault.class).forEach(payload.plant()::clear);
        posts.get(1).leave();
        posts.get(0).takeOver();
        long until = scene.nowMillis() + SETTLE_MILLIS;
        boolean asked = false;
        do {
            step();
            if (!asked && posts.get(0).state().session().open()) {
                posts.get(0).act(new Act.SafeAll());
                asked = true;
            }
        } while (scene.nowMillis() < until
                && !(scene.nowMillis() % 500 == 0 && unsettled().isEmpty()));
        Optional<String> left = unsettled();
        scene.holds(left.isEmpty(), left.map(EndRules::rule).orElse(""), left.orElse(""));
        for (Post post : posts) {
            deskRules.ended(post.state());
        }
    }

    private Optional<String> unsettled() {
        DeskState desk = posts.get(0).state();
        TreeSet<Long> recorded = new TreeSet<>(posts.get(0).recorded());
        recorded.addAll(posts.get(1).recorded());
        return EndRules.unsettled(desk, recorded, account, plantRules);
    }
}
