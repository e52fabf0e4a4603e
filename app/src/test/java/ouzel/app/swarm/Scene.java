package ouzel.app.swarm;

/** Where and when the rules look, and how they say that one is broken. */
final class Scene {
    private final TruePermissives permissives;
    private long nowMillis;
    private long clockMillis;

    Scene(Script.Build build) {
        this.clockMillis = build.clockMillis();
        this.permissives = new TruePermissives(this, build.capabilities());
    }

    void step(boolean powered) {
        nowMillis += 10;
        clockMillis += powered ? 10 : 0;
    }

    void clockStarts() {
        clockMillis = 10;
    }

    /** Time since the sortie began, ms. */
    long nowMillis() {
        return nowMillis;
    }

    /** What the payload's clock showed before this step, ms. */
    long clockMillis() {
        return clockMillis - 10;
    }

    TruePermissives permissives() {
        return permissives;
    }

    void holds(boolean condition, String rule, Object what) {
        if (!condition) {
            throw new Violation(rule, nowMillis, String.valueOf(what));
        }
    }
}
