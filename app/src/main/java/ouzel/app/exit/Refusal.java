package ouzel.app.exit;

/** The world does not allow what was asked: one sentence for the operator, one exit code for the shell. */
public final class Refusal extends Exception {
    private static final long serialVersionUID = 1L;

    private final ExitCode exitCode;

    /**
     * A refusal.
     *
     * @param exitCode how the program ends because of it
     * @param sentence what is wrong, where, and what to do; never holds a key
     */
    public Refusal(ExitCode exitCode, String sentence) {
        this(exitCode, sentence, null);
    }

    /** A refusal with the failure that led to it, which goes to the log only; {@code cause} may be {@code null}. */
    public Refusal(ExitCode exitCode, String sentence, Throwable cause) {
        super(sentence, cause);
        this.exitCode = exitCode;
    }

    public ExitCode exitCode() {
        return exitCode;
    }

    /** What is wrong, where, and what to do. */
    public String sentence() {
        return getMessage();
    }
}
