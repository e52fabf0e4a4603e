package ouzel.simulator.controller;

import java.util.Arrays;
import java.util.Optional;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Settings;

/**
 * The controller's memory that survives loss of power.
 *
 * <p>A new {@link Controller} over the same memory is a restart. To cut the power at an instant, take a {@link #copy()}
 * at that instant and start a controller over it.
 */
public final class NonVolatile {

    /**
     * Written before an output is switched on and wiped after it is off for good: found at power-up, it tells that the
     * power went in the middle.
     *
     * @param sampler what acts
     * @param orderId the trigger order it acts on
     */
    public record Acting(Sampler sampler, long orderId) {}

    private final SamplerState[] use = new SamplerState[Sampler.values().length];
    private final EventStore events;
    private final OutcomeStore outcomes;
    private Settings settings;
    private long bootCount;
    private int strokesUsed;
    private boolean gasVented;
    private Optional<Acting> acting = Optional.empty();

    /** Memory as it leaves the workshop: nothing used, no event, never started. */
    public NonVolatile(Settings settings) {
        this.settings = settings;
        this.events = new EventStore();
        this.outcomes = new OutcomeStore();
        Arrays.fill(use, SamplerState.SAFE);
    }

    private NonVolatile(NonVolatile other) {
        settings = other.settings;
        events = new EventStore(other.events);
        outcomes = new OutcomeStore(other.outcomes);
        System.arraycopy(other.use, 0, use, 0, use.length);
        bootCount = other.bootCount;
        strokesUsed = other.strokesUsed;
        gasVented = other.gasVented;
        acting = other.acting;
    }

    /** This memory as it stands now, apart from this one. */
    public NonVolatile copy() {
        return new NonVolatile(this);
    }

    public Settings settings() {
        return settings;
    }

    /** Starts of the controller since the workshop. */
    public long bootCount() {
        return bootCount;
    }

    /** SAFE for a fresh sampler, else DONE, SPENT or FAULT. */
    public SamplerState use(Sampler sampler) {
        return use[sampler.ordinal()];
    }

    public int strokesUsed() {
        return strokesUsed;
    }

    /** True if gas was vented and the hold for it was not seen to end. */
    public boolean gasVented() {
        return gasVented;
    }

    public Optional<Acting> acting() {
        return acting;
    }

    public EventStore events() {
        return events;
    }

    public OutcomeStore outcomes() {
        return outcomes;
    }

    void settings(Settings changed) {
        settings = changed;
    }

    void countBoot() {
        bootCount = bootCount + 1 & 0xFFFF_FFFFL;
    }

    void use(Sampler sampler, SamplerState state) {
        use[sampler.ordinal()] = state;
    }

    void countStroke() {
        strokesUsed = Math.min(strokesUsed + 1, 0xFF);
        gasVented = true;
    }

    void freshCartridge() {
        strokesUsed = 0;
    }

    void ventHoldOver() {
        gasVented = false;
    }

    void beginActing(Sampler sampler, long orderId) {
        acting = Optional.of(new Acting(sampler, orderId));
    }

    void endActing() {
        acting = Optional.empty();
    }
}
