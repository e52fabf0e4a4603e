package ouzel.app.swarm;

/** What must always hold did not; the rule's name tells one kind of failure from another. */
final class Violation extends AssertionError {
    private static final long serialVersionUID = 1;

    private final String rule;

    Violation(String rule, long nowMillis, String what) {
        super(rule + " at " + nowMillis + " ms: " + what);
        this.rule = rule;
    }

    Violation(long nowMillis, Throwable thrown) {
        super("no exception anywhere at " + nowMillis + " ms: " + thrown, thrown);
        this.rule = "no exception anywhere";
    }

    String rule() {
        return rule;
    }
}
