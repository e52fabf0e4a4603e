package ouzel.protocol.message;

/** What a sampler is doing, by the payload's own account. */
public enum SamplerState {
    /** Outputs off, nothing armed. */
    SAFE(0),
    /** One trigger will be obeyed until the arming token runs out. */
    ARMED(1),
    /** A pump runs. */
    DRAWING(2),
    /** The valve is open, or the probe is on its way back. */
    STROKING(3),
    /** The whole dose is aboard; the container or probe must be changed before the next one. */
    DONE(4),
    /** Used without a whole sample; the container or probe must be changed before the next one. */
    SPENT(5),
    /** Stopped by a fault on board that a person must look at. */
    FAULT(6);

    private final int code;

    SamplerState(int code) {
        this.code = code;
    }

    /** The byte that stands for this state on the wire. */
    public int code() {
        return code;
    }

    /** True while an output of this sampler may be driven. */
    public boolean isActing() {
        return this == DRAWING || this == STROKING;
    }

    /** True when the container or probe is used and must be changed before it can be armed again. */
    public boolean isUsed() {
        return this == DONE || this == SPENT;
    }
}
