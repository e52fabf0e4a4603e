package ouzel.app.swarm;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import ouzel.app.desk.Act;
import ouzel.app.desk.Condition;
import ouzel.app.swarm.Happening.Occasion;
import ouzel.app.swarm.Script.Line;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.Sampler;
import ouzel.simulator.controller.BootCause;
import ouzel.simulator.plant.Fault;
import ouzel.simulator.plant.Surroundings.Place;
import ouzel.simulator.radio.Weather;

/** Makes one whole script from one seed. */
final class ScriptWriter {
    private static final Sampler[] SAMPLERS = Sampler.values();
    private static final Weather HOLDING = new Weather(0.05, 2, 0.2, 20, 120, 0.1, 1e-6, 0.05, 9_000, List.of());
    private static final Weather NOISY = new Weather(0.1, 3, 0.1, 20, 250, 0.2, 1e-4, 0.01, 4_000, List.of());
    private static final Weather[] SKIES = {
        Weather.CLEAR, Weather.CLEAR, Weather.LIGHT_LOSS, Weather.ROUGH, HOLDING, NOISY
    };
    private static final int[] DOSES = {1, 5, 20, 30, 60, 150, 300, 500, 5_000, 65_535};
    private static final int[] KINDS = {
        0,
        Kind.ARM.code(),
        Kind.TRIGGER.code(),
        Kind.TRIGGER.code(),
        Kind.RELOAD.code(),
        Kind.SAFE_ALL.code(),
        Kind.CONFIRM.code(),
        Kind.KEEP_ALIVE.code()
    };
    /** The payload's clock wraps here, ms. */
    private static final long CLOCK_WRAP = 1L << 32;

    private final SplittableRandom random;
    private final List<Line> lines = new ArrayList<>();
    private final int chaosMillis;

    private ScriptWriter(long seed) {
        random = new SplittableRandom(seed);
        chaosMillis = random.nextInt(10_000, 26_000);
    }

    static Script of(long seed) {
        return new ScriptWriter(seed).write(seed);
    }

    private Script write(long seed) {
        Sampler goal = pick(SAMPLERS);
        Script.Build build = build();
        add(0, new Happening.Fly(placeFor(goal)));
        add(10, new Happening.Sky(pick(SKIES)));
        for (Sampler sampler : SAMPLERS) {
            add(20, new Happening.Push(0, new Act.SetDose(sampler, dose())));
        }
        add(50, new Happening.Strive(goal));
        for (int left = random.nextInt(3, 16); left > 0; left--) {
            add(random.nextInt(chaosMillis), happening());
        }
        for (int left = random.nextInt(0, 5); left > 0; left--) {
            Occasion occasion = pick(Occasion.values());
            add(random.nextInt(12_000), new Happening.After(occasion, soon(), happening()));
        }
        unlucky();
        lines.sort(Comparator.comparingInt(Line::atMillis));
        List<Line> numbered = new ArrayList<>();
        lines.forEach(line -> numbered.add(new Line(numbered.size(), line.atMillis(), line.happening())));
        return new Script(seed, build, chaosMillis, numbered);
    }

    /** What needs two or three things to meet, and would hardly ever by chance. */
    private void unlucky() {
        switch (random.nextInt(16)) {
            case 0, 1 -> leaveAfterTheTrigger();
            case 2, 3 -> {
                int kind = random.nextInt(2) == 0 ? Kind.RELOAD.code() : kind();
                int late = random.nextBoolean() ? random.nextInt(50, 1_500) : random.nextInt(1_500, 9_000);
                add(random.nextInt(8_000), new Happening.Retell(kind, late));
            }
            case 4, 5, 6 -> add(random.nextInt(4_000), new Happening.Break(pick(Fault.values())));
            case 7, 8 -> meddleAndFlyOn();
            default -> {
                // A sortie as it comes.
            }
        }
    }

    /** A third party changes what it likes, and the crew takes over and goes on. */
    private void meddleAndFlyOn() {
        int atMillis = random.nextInt(5_000);
        add(atMillis, new Happening.Meddle(random.nextLong()));
        add(atMillis + random.nextInt(1_000, 5_000), new Happening.TakeOver(0));
    }

    /** The pilot leaves while a trigger is on its way: what was true when it was sent is not when it comes. */
    private void leaveAfterTheTrigger() {
        add(random.nextInt(6_000), new Happening.HoldTriggers(random.nextInt(300, 1_900)));
        add(30, new Happening.After(Occasion.TRIGGER_SENT, 10, new Happening.Fly(pick(Place.values()))));
    }

    private void add(int atMillis, Happening happening) {
        lines.add(new Line(0, atMillis, happening));
    }

    private Script.Build build() {
        int capabilities = Capability.all();
        if (random.nextInt(5) == 0) {
            Capability missing = pick(Capability.values());
            capabilities &= missing.code() < Capability.TILT.code() ? ~0 : ~missing.bit();
        }
        long clock = random.nextInt(4) == 0 ? CLOCK_WRAP - 10L * random.nextInt(1, 2_000) : 0;
        return new Script.Build(capabilities, clock);
    }

    private int soon() {
        return switch (random.nextInt(3)) {
            case 0 -> 10 * random.nextInt(0, 4);
            case 1 -> 10 * random.nextInt(0, 40);
            default -> 10 * random.nextInt(0, 250);
        };
    }

    private int dose() {
        return DOSES[random.nextInt(DOSES.length)];
    }

    private static Place placeFor(Sampler sampler) {
        return switch (sampler) {
            case WATER -> Place.AFLOAT;
            case AIR -> Place.ALOFT;
            case SOIL -> Place.ON_GROUND;
        };
    }

    private Happening happening() {
        return switch (random.nextInt(20)) {
            case 0 -> new Happening.Sky(pick(SKIES));
            case 1 -> new Happening.Silence(random.nextInt(200, 6_000));
            case 2 -> random.nextInt(3) == 0 ? new Happening.Fly(pick(Place.values())) : push();
            case 3 -> new Happening.Strive(pick(SAMPLERS));
            case 4 -> new Happening.Break(pick(Fault.values()));
            case 5 -> new Happening.Mend(pick(Fault.values()));
            case 6 -> new Happening.Cut(10 * random.nextInt(1, 200), pick(BootCause.values()));
            case 7 -> new Happening.Restart(0);
            case 8 -> new Happening.Freeze(0, random.nextInt(300, 6_000));
            case 9 -> new Happening.SetClock(0, random.nextLong(-90_000_000L, 90_000_000L));
            case 10 -> new Happening.TakeOver(random.nextInt(3) == 0 ? 1 : 0);
            case 11, 12 -> again();
            case 13 -> new Happening.Forge(kind(), random.nextInt(3), random.nextInt(8 * 40));
            case 14 -> new Happening.HoldTriggers(random.nextInt(500, 5_000));
            case 15 -> new Happening.Clash(pick(SAMPLERS), random.nextBoolean());
            case 16 -> random.nextInt(2) == 0 ? new Happening.Meddle(random.nextLong()) : push();
            default -> push();
        };
    }

    private Happening again() {
        int late = random.nextInt(2) == 0 ? random.nextInt(9_000) : 100 * random.nextInt(94, 101);
        return new Happening.Again(kind(), random.nextInt(4), late);
    }

    private int kind() {
        return KINDS[random.nextInt(KINDS.length)];
    }

    private Happening push() {
        int post = random.nextInt(8) == 0 ? 1 : 0;
        Sampler sampler = pick(SAMPLERS);
        return new Happening.Push(
                post,
                switch (random.nextInt(9)) {
                    case 0, 1 -> new Act.Arm(sampler);
                    case 2, 3 -> new Act.Trigger(sampler);
                    case 4 -> new Act.Stop(sampler);
                    case 5 -> new Act.SafeAll();
                    case 6 -> new Act.Reload(sampler);
                    case 7 -> new Act.SetDose(sampler, dose());
                    default -> new Act.Attest(pick(Condition.values()), "deck crew");
                });
    }

    private <T> T pick(T[] choices) {
        return choices[random.nextInt(choices.length)];
    }
}
