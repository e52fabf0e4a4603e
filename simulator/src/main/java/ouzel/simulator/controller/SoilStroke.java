package ouzel.simulator.controller;

import java.util.Optional;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Readings.Switch;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.simulator.plant.Outputs;

/**
 * One stroke of the soil probe, from opening the valve until the probe is home again.
 *
 * <pre>
 * DRIVING    asked opening over                       closes, RETURNING
 * DRIVING    stop, safe-all, plug out, legs lift      closes, RETURNING with that as the cause
 * either     never left home within the leave limit   FAULT  FAILED  PROBE_STAYED, or SPENT with the cause
 * RETURNING  home again                               DONE   COMPLETED, or SPENT  FAILED with the cause
 * RETURNING  not home within the return limit         FAULT  FAILED  PROBE_AWAY
 * </pre>
 *
 * <p>Once begun it always runs to one of these ends: a probe left in the ground would tether the aircraft.
 */
final class SoilStroke implements Act {
    private static final Outputs VALVE_OPEN = new Outputs(false, false, true);
    /** What closes the valve early; the rest is shaken by the stroke itself. */
    private static final int TRIPPING = Permissive.PLUG_FITTED.bit() | Permissive.ON_GROUND.bit();
    /** Two steps: one reading alone may be a bounce. */
    private static final int AWAY_PROOF_MILLIS = 10;

    private enum Phase {
        DRIVING,
        RETURNING
    }

    private final Armed armed;
    private final long orderId;
    private final StrokeLimits limits;
    private final long openedAtMillis;
    private final Lasting home = new Lasting();
    private final Lasting away = new Lasting();
    private Phase phase = Phase.DRIVING;
    private long closedAtMillis;
    private boolean left;
    private Optional<Outcome> cause = Optional.empty();

    SoilStroke(Armed armed, long orderId, StrokeLimits limits, long nowMillis) {
        this.armed = armed;
        this.orderId = orderId;
        this.limits = limits;
        this.openedAtMillis = nowMillis;
    }

    @Override
    public Sampler sampler() {
        return Sampler.SOIL;
    }

    @Override
    public long orderId() {
        return orderId;
    }

    @Override
    public int attested() {
        return armed.attested();
    }

    @Override
    public Outputs outputs() {
        return phase == Phase.DRIVING ? VALVE_OPEN : Outputs.OFF;
    }

    @Override
    public long runMillis(long nowMillis) {
        return nowMillis - openedAtMillis;
    }

    @Override
    public boolean finishesAlone() {
        return true;
    }

    @Override
    public Optional<Ending> step(Instruments instruments, PermissiveWatch watch, long nowMillis) {
        boolean isHome = instruments.isClosed(Switch.PROBE_HOME);
        left = away.lasts(!isHome, AWAY_PROOF_MILLIS, nowMillis) || left;
        home.note(isHome, nowMillis);
        if (phase == Phase.DRIVING) {
            drive(watch, nowMillis);
        }
        return phase == Phase.RETURNING || !left ? judge(nowMillis) : Optional.empty();
    }

    @Override
    public Optional<Ending> stop(Reason reason, int measured, int limit, long nowMillis) {
        close(Optional.of(Outcome.because(orderId, Outcome.Stage.FAILED, reason, measured, limit)), nowMillis);
        return Optional.empty();
    }

    private void drive(PermissiveWatch watch, long nowMillis) {
        Optional<Unmet> trip = watch.tripped(Sampler.SOIL, TRIPPING, nowMillis);
        if (trip.isPresent()) {
            close(trip.map(unmet -> unmet.failed(orderId)), nowMillis);
        } else if (runMillis(nowMillis) >= armed.dose()) {
            close(Optional.empty(), nowMillis);
        }
    }

    private void close(Optional<Outcome> why, long nowMillis) {
        if (phase == Phase.DRIVING) {
            closedAtMillis = nowMillis;
        }
        phase = Phase.RETURNING;
        cause = cause.or(() -> why);
    }

    private Optional<Ending> judge(long nowMillis) {
        if (!left) {
            return runMillis(nowMillis) >= limits.leaveMillis() ? Optional.of(stayed(nowMillis)) : Optional.empty();
        }
        if (home.hasLasted(limits.homeMillis(), nowMillis)) {
            return Optional.of(cause.map(why -> end(SamplerState.SPENT, why, nowMillis))
                    .orElseGet(() -> end(SamplerState.DONE, Outcome.of(orderId, Outcome.Stage.COMPLETED), nowMillis)));
        }
        long waited = nowMillis - closedAtMillis;
        if (waited >= limits.returnMillis()) {
            return Optional.of(
                    end(SamplerState.FAULT, failed(Reason.PROBE_AWAY, waited, limits.returnMillis()), nowMillis));
        }
        return Optional.empty();
    }

    private Ending stayed(long nowMillis) {
        return cause.map(why -> end(SamplerState.SPENT, why, nowMillis))
                .orElseGet(() -> end(
                        SamplerState.FAULT,
                        failed(Reason.PROBE_STAYED, runMillis(nowMillis), limits.leaveMillis()),
                        nowMillis));
    }

    private Ending end(SamplerState state, Outcome outcome, long nowMillis) {
        phase = Phase.RETURNING;
        Event.Kind kind =
                outcome.stage() == Outcome.Stage.COMPLETED ? Event.Kind.STROKE_COMPLETED : Event.Kind.STROKE_FAILED;
        return new Ending(state, outcome, kind, (int) runMillis(nowMillis));
    }

    private Outcome failed(Reason reason, long measured, int limit) {
        return Outcome.because(orderId, Outcome.Stage.FAILED, reason, (int) measured, limit);
    }
}
