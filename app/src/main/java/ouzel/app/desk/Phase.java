package ouzel.app.desk;

import ouzel.protocol.message.SamplerState;

/** What a sampler is doing, as far as the console knows. */
public enum Phase {
    /** Not known: no fresh status, or an order whose outcome nobody has told yet. */
    UNKNOWN("UNKNOWN"),
    /** Outputs off, nothing armed. */
    SAFE("safe"),
    /** One trigger will be obeyed. */
    ARMED("ARMED"),
    /** A pump runs. */
    DRAWING("drawing"),
    /** The valve is open, or the probe is on its way back. */
    STROKING("stroking"),
    /** The whole dose is aboard. */
    DONE("done"),
    /** Used without a whole sample. */
    SPENT("spent"),
    /** A person must look at it. */
    FAULT("FAULT");

    private final String word;

    Phase(String word) {
        this.word = word;
    }

    /** The word on the screen. */
    public String word() {
        return word;
    }

    /** True while something may move. */
    public boolean isActing() {
        return this == DRAWING || this == STROKING;
    }

    static Phase of(SamplerState state) {
        return switch (state) {
            case SAFE -> SAFE;
            case ARMED -> ARMED;
            case DRAWING -> DRAWING;
            case STROKING -> STROKING;
            case DONE -> DONE;
            case SPENT -> SPENT;
            case FAULT -> FAULT;
        };
    }
}
