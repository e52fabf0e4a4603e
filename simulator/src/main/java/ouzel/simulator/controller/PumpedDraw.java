package ouzel.simulator.controller;

import java.util.Optional;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Readings.Switch;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Settings;
import ouzel.simulator.plant.Outputs;

/**
 * One run of a pump, from the trigger to its end.
 *
 * <p>The dose is metered as the flow in the settings times the time since the pump's current first stayed above its
 * primed current. Every way to end is asked at every step, those that protect first:
 *
 * <pre>
 * current over the hard limit, or none      FAULT  FAILED     OVER_CURRENT, NO_CURRENT
 * bag over its hard pressure                FAULT  FAILED     BAG_FULL
 * battery under its trip                    SPENT  FAILED     BATTERY_SAG
 * a permissive trips                        SPENT  FAILED     PERMISSIVE
 * jar full, bag at its stop pressure        DONE   COMPLETED  JAR_FULL, BAG_FULL   with at least 0.9 of the dose
 *                                           SPENT  FAILED     the same             with less
 * dose reached                              DONE   COMPLETED  DOSE_REACHED
 * longest run, or not primed in time        SPENT  FAILED     RUN_LIMIT
 * </pre>
 */
final class PumpedDraw implements Act {
    /** Flow in 0.01 mL/s times time in ms gives units of this many to the mL. */
    private static final long METER_UNITS_PER_MILLILITRE = 100_000;

    private static final int GREATEST_METERED = 0xFFFF;
    private static final long NOT_PRIMED = -1;
    /** Permissives that are judged otherwise once the pump runs, or cannot change while it does. */
    private static final int NOT_TRIPPING = Permissive.BATTERY.bit()
            | Permissive.ALONE.bit()
            | Permissive.JAR_EMPTY.bit()
            | Permissive.BAG_SLACK.bit()
            | Permissive.NO_VENTED_GAS.bit();

    private final Armed armed;
    private final long orderId;
    private final Limits limits;
    private final PumpLimits pump;
    private final int flow;
    private final long runLimitMillis;
    private final boolean finishesAlone;
    private final long startedAtMillis;
    private final Lasting wet = new Lasting();
    private final Lasting over = new Lasting();
    private final Lasting idle = new Lasting();
    private final Lasting sagging = new Lasting();
    private final Lasting full = new Lasting();
    private final Smoothed mean = new Smoothed();
    private int meanMilliamps;
    private long primedAtMillis = NOT_PRIMED;
    private boolean running = true;

    PumpedDraw(Armed armed, long orderId, Settings settings, Limits limits, long nowMillis) {
        boolean water = armed.sampler() == Sampler.WATER;
        this.armed = armed;
        this.orderId = orderId;
        this.limits = limits;
        this.pump = limits.pump(armed.sampler());
        this.flow = water ? settings.waterFlow() : settings.airFlow();
        this.runLimitMillis = water ? settings.waterRunLimitMillis() : settings.airRunLimitMillis();
        this.finishesAlone = water ? settings.waterFinishesAlone() : settings.airFinishesAlone();
        this.startedAtMillis = nowMillis;
    }

    @Override
    public Sampler sampler() {
        return armed.sampler();
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
        if (!running) {
            return Outputs.OFF;
        }
        return armed.sampler() == Sampler.WATER ? new Outputs(true, false, false) : new Outputs(false, true, false);
    }

    @Override
    public long runMillis(long nowMillis) {
        return nowMillis - startedAtMillis;
    }

    @Override
    public boolean finishesAlone() {
        return finishesAlone;
    }

    /** The dose asked for, mL. */
    int dose() {
        return armed.dose();
    }

    /** The dose metered so far, mL. */
    int metered(long nowMillis) {
        if (primedAtMillis == NOT_PRIMED) {
            return 0;
        }
        return (int) Math.min(flow * (nowMillis - primedAtMillis) / METER_UNITS_PER_MILLILITRE, GREATEST_METERED);
    }

    @Override
    public Optional<Ending> step(Instruments instruments, PermissiveWatch watch, long nowMillis) {
        noteCurrent(instruments.pumpMilliamps(armed.sampler()), nowMillis);
        return faultOfCurrent(instruments, nowMillis)
                .or(() -> sag(instruments, nowMillis))
                .or(() -> trip(watch, nowMillis))
                .or(() -> fullness(instruments, nowMillis))
                .or(() -> measure(nowMillis));
    }

    @Override
    public Optional<Ending> stop(Reason reason, int measured, int limit, long nowMillis) {
        return failed(SamplerState.SPENT, reason, measured, limit, nowMillis);
    }

    private void noteCurrent(int milliamps, long nowMillis) {
        boolean judged = runMillis(nowMillis) >= pump.inrushBlankMillis();
        over.note(judged && milliamps > pump.hardMilliamps(), nowMillis);
        meanMilliamps = mean.take(milliamps);
        idle.note(judged && meanMilliamps < pump.idleMilliamps(), nowMillis);
        boolean wetLongEnough =
                wet.lasts(judged && meanMilliamps > pump.primedMilliamps(), pump.primedAfterMillis(), nowMillis);
        if (primedAtMillis == NOT_PRIMED && wetLongEnough) {
            primedAtMillis = nowMillis - pump.primedAfterMillis();
        }
    }

    private Optional<Ending> faultOfCurrent(Instruments instruments, long nowMillis) {
        int milliamps = instruments.pumpMilliamps(armed.sampler());
        if (over.hasLasted(pump.hardAfterMillis(), nowMillis)) {
            return failed(SamplerState.FAULT, Reason.OVER_CURRENT, milliamps, pump.hardMilliamps(), nowMillis);
        }
        if (idle.hasLasted(pump.idleAfterMillis(), nowMillis)) {
            return failed(SamplerState.FAULT, Reason.NO_CURRENT, meanMilliamps, pump.idleMilliamps(), nowMillis);
        }
        int pascals = instruments.bagPascals();
        if (armed.sampler() == Sampler.AIR && pascals != Readings.ABSENT && pascals >= limits.bagHardPascals()) {
            return failed(SamplerState.FAULT, Reason.BAG_FULL, pascals, limits.bagHardPascals(), nowMillis);
        }
        return Optional.empty();
    }

    private Optional<Ending> sag(Instruments instruments, long nowMillis) {
        Band band = limits.band(Permissive.BATTERY);
        int millivolts = instruments.batteryMillivolts();
        if (sagging.lasts(millivolts < band.tripLeast(), band.tripsAfterMillis(), nowMillis)) {
            return failed(SamplerState.SPENT, Reason.BATTERY_SAG, millivolts, band.tripLeast(), nowMillis);
        }
        return Optional.empty();
    }

    private Optional<Ending> trip(PermissiveWatch watch, long nowMillis) {
        return watch.tripped(armed.sampler(), ~NOT_TRIPPING, nowMillis)
                .map(unmet -> end(SamplerState.SPENT, unmet.failed(orderId), nowMillis));
    }

    private Optional<Ending> fullness(Instruments instruments, long nowMillis) {
        if (!full.lasts(isFull(instruments), limits.settleMillis(), nowMillis)) {
            return Optional.empty();
        }
        boolean enough = metered(nowMillis) * 10L >= armed.dose() * 9L;
        if (armed.sampler() == Sampler.WATER) {
            return Optional.of(fullEnding(enough, Reason.JAR_FULL, metered(nowMillis), armed.dose(), nowMillis));
        }
        return Optional.of(
                fullEnding(enough, Reason.BAG_FULL, instruments.bagPascals(), limits.bagStopPascals(), nowMillis));
    }

    private boolean isFull(Instruments instruments) {
        if (armed.sampler() == Sampler.WATER) {
            return instruments.measures(Permissive.JAR_EMPTY) && instruments.isClosed(Switch.JAR_FULL);
        }
        return instruments.bagPascals() >= limits.bagStopPascals();
    }

    private Ending fullEnding(boolean enough, Reason reason, int measured, int limit, long nowMillis) {
        Outcome.Stage stage = enough ? Outcome.Stage.COMPLETED : Outcome.Stage.FAILED;
        SamplerState state = enough ? SamplerState.DONE : SamplerState.SPENT;
        return end(state, Outcome.because(orderId, stage, reason, measured, limit), nowMillis);
    }

    private Optional<Ending> measure(long nowMillis) {
        int metered = metered(nowMillis);
        if (metered >= armed.dose()) {
            return Optional.of(fullEnding(true, Reason.DOSE_REACHED, metered, armed.dose(), nowMillis));
        }
        long ran = runMillis(nowMillis);
        long limit =
                primedAtMillis == NOT_PRIMED ? Math.min(pump.unprimedLimitMillis(), runLimitMillis) : runLimitMillis;
        return ran >= limit
                ? failed(SamplerState.SPENT, Reason.RUN_LIMIT, (int) ran, (int) limit, nowMillis)
                : Optional.empty();
    }

    private Optional<Ending> failed(SamplerState state, Reason reason, int measured, int limit, long nowMillis) {
        return Optional.of(
                end(state, Outcome.because(orderId, Outcome.Stage.FAILED, reason, measured, limit), nowMillis));
    }

    private Ending end(SamplerState state, Outcome outcome, long nowMillis) {
        running = false;
        Event.Kind kind =
                outcome.stage() == Outcome.Stage.COMPLETED ? Event.Kind.DRAW_COMPLETED : Event.Kind.DRAW_ENDED_EARLY;
        return new Ending(state, outcome, kind, metered(nowMillis));
    }
}
