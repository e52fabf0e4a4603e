package ouzel.protocol.message;

/** The three samplers under the aircraft; the wire code is also their index. */
public enum Sampler {
    /** Pump to a jar, afloat. */
    WATER(0),
    /** Pump to a gas bag, aloft or landed. */
    AIR(1),
    /** Gas-driven probe with spring return, standing on the ground. */
    SOIL(2);

    private final int code;

    Sampler(int code) {
        this.code = code;
    }

    /** The byte that stands for this sampler on the wire. */
    public int code() {
        return code;
    }

    /** True for the samplers that draw with a pump, false for the soil probe. */
    public boolean isPumped() {
        return this != SOIL;
    }
}
