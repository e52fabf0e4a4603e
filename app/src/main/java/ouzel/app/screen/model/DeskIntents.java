package ouzel.app.screen.model;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import ouzel.app.desk.Act;
import ouzel.app.desk.Condition;
import ouzel.protocol.message.Sampler;

/**
 * What the operator's keys and clicks mean, and nothing about how they came: it lets through only what the newest view
 * allows. The desk and the payload judge again.
 *
 * <p>Pure: told the time, ns. Thread: one.
 */
public final class DeskIntents {
    private final Consumer<Act> acts;
    private final HoldToTrigger hold = new HoldToTrigger();
    private Optional<DeskView> view = Optional.empty();
    private Optional<Sampler> holding = Optional.empty();
    private Sampler selected = Sampler.WATER;

    /**
     * What the hold control of one lane shows.
     *
     * @param enabled whether holding it would trigger
     * @param fraction how much of the hold is done, 0 to 1
     * @param text what it says
     * @param note how far it is, or why it was broken off; may be empty
     */
    public record HoldView(boolean enabled, double fraction, String text, String note) {}

    /** @param acts where acts go */
    public DeskIntents(Consumer<Act> acts) {
        this.acts = acts;
    }

    /** The newest view: a hold ends when its sampler is no longer the armed one. */
    public void show(DeskView next) {
        view = Optional.of(next);
        if (holding.isPresent() && !next.armed().equals(holding)) {
            hold.cancel("no longer armed");
        }
    }

    /** The lane whose key or button was pressed last. */
    public Sampler selected() {
        return selected;
    }

    /** Selects a lane without acting on it. */
    public void selectPressed(Sampler sampler) {
        selected = sampler;
    }

    /** Selects a lane and arms it if it may be armed. */
    public void armPressed(Sampler sampler) {
        selected = sampler;
        controls(sampler).filter(LaneView.Controls::arm).ifPresent(controls -> acts.accept(new Act.Arm(sampler)));
    }

    /** Stops one lane. */
    public void stopPressed(Sampler sampler) {
        controls(sampler).filter(LaneView.Controls::stop).ifPresent(controls -> acts.accept(new Act.Stop(sampler)));
    }

    /** Stops what acts, or else what is armed. */
    public void stopPressed() {
        view.flatMap(DeskView::stoppable).ifPresent(sampler -> acts.accept(new Act.Stop(sampler)));
    }

    /** Everything off: always let through. */
    public void safeAllPressed() {
        hold.cancel("safe-all");
        acts.accept(new Act.SafeAll());
    }

    /** True if a fresh container may be recorded for {@code sampler} now. */
    public boolean mayReload(Sampler sampler) {
        return controls(sampler).filter(LaneView.Controls::reload).isPresent();
    }

    /** A fresh container was recorded, and the question answered with yes. */
    public void reloadConfirmed(Sampler sampler) {
        if (mayReload(sampler)) {
            acts.accept(new Act.Reload(sampler));
        }
    }

    /** Another amount was entered. */
    public void doseEntered(Sampler sampler, int dose) {
        view.map(shown -> shown.lane(sampler).dose())
                .filter(shown -> shown.editable() && shown.amount() != dose && dose > 0)
                .ifPresent(shown -> acts.accept(new Act.SetDose(sampler, dose)));
    }

    /** A person confirmed a condition; a blank name confirms nothing. */
    public void attested(Condition condition, String person) {
        if (!person.isBlank()) {
            acts.accept(new Act.Attest(condition, person.strip()));
        }
    }

    /** A pinned note was seen. */
    public void acknowledged(long note) {
        acts.accept(new Act.Acknowledge(note));
    }

    /** The trigger control of the armed lane went down. */
    public void holdPressed(long nowNanos) {
        Optional<Sampler> armed = view.flatMap(DeskView::armed);
        boolean mayStart = armed.isPresent() && hold.state() != HoldToTrigger.State.HELD;
        if (mayStart) {
            holding = armed;
        }
        if (armed.isPresent() || hold.state() != HoldToTrigger.State.IDLE) {
            hold.press(nowNanos);
        }
    }

    /** The trigger control came up. */
    public void holdReleased(long nowNanos) {
        hold.release(nowNanos);
    }

    /** The window lost the keyboard or the mouse: nothing is held any more. */
    public void holdBroken(String why) {
        hold.letGo(why);
    }

    /** Something came between; the control may still be down, so that only a fresh press starts again. */
    public void holdCancelled(String why) {
        hold.cancel(why);
    }

    /** Time went on: completes a hold and triggers, once. */
    public void tick(long nowNanos) {
        if (hold.tick(nowNanos)) {
            holding.ifPresent(sampler -> acts.accept(new Act.Trigger(sampler)));
        }
        if (hold.state() == HoldToTrigger.State.IDLE) {
            holding = Optional.empty();
        }
    }

    /** True while time must go on in small steps. */
    public boolean isHolding() {
        return hold.state() != HoldToTrigger.State.IDLE;
    }

    /** What the hold control of {@code sampler} shows at {@code nowNanos}. */
    public HoldView holdView(Sampler sampler, long nowNanos) {
        Optional<LaneView.Controls> controls = controls(sampler);
        boolean enabled = controls.filter(LaneView.Controls::hold).isPresent();
        if (holding.filter(sampler::equals).isPresent()) {
            return held(enabled, nowNanos);
        }
        return enabled
                ? new HoldView(true, 0, "Hold  Space", hold.why().isEmpty() ? "0.8 s to trigger" : hold.why())
                : new HoldView(false, 0, controls.map(LaneView.Controls::rest).orElse(""), "");
    }

    private HoldView held(boolean enabled, long nowNanos) {
        double fraction = hold.fraction(nowNanos);
        return switch (hold.state()) {
            case IDLE, HELD -> new HoldView(enabled, fraction, "Hold  Space", heldSeconds(fraction));
            case COMPLETED -> new HoldView(enabled, fraction, "Triggered", "");
            case CANCELLED -> new HoldView(enabled, fraction, "Let go", hold.why());
        };
    }

    private static String heldSeconds(double fraction) {
        double whole = HoldToTrigger.HOLD_MILLIS / 1000.0;
        return String.format(Locale.ROOT, "%.1f of %.1f s", fraction * whole, whole);
    }

    private Optional<LaneView.Controls> controls(Sampler sampler) {
        return view.map(shown -> shown.lane(sampler).controls());
    }
}
