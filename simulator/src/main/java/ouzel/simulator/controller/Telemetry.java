package ouzel.simulator.controller;

import java.util.Optional;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.Sampler;
import ouzel.simulator.plant.Outputs;

/** What the payload says by itself, each at its own rate: status, identity, traces, waveforms, events again. */
final class Telemetry {
    private static final int STATUS_MILLIS = 100;
    private static final int IDENTITY_MILLIS = 2_000;
    private static final Optional<Sampler> WATER = Optional.of(Sampler.WATER);
    private static final Optional<Sampler> AIR = Optional.of(Sampler.AIR);

    private final Account account;
    private final Outbox outbox;
    private final Instruments instruments;
    private final EventSender events;
    private final PumpTrace trace;
    private final ValveCapture capture;
    private Outputs before = Outputs.OFF;
    private long nextStatusAtMillis;
    private long nextIdentityAtMillis;

    Telemetry(Account account, Outbox outbox, Instruments instruments, EventSender events) {
        this.account = account;
        this.outbox = outbox;
        this.instruments = instruments;
        this.events = events;
        this.trace = new PumpTrace(outbox);
        this.capture = new ValveCapture(outbox);
    }

    /** One step; {@code outputs} is what is driven from now on. */
    void step(Outputs outputs, boolean inSession, long nowMillis) {
        Optional<Sampler> running = pump(outputs);
        if (running.isPresent() && !before.waterPump() && !before.airPump()) {
            trace.restart();
        }
        trace.step(running, instruments, nowMillis);
        if (instruments.has(Capability.VALVE_WAVEFORM)) {
            capture.step(outputs.soilValve(), instruments.valveMilliamps());
        }
        before = outputs;
        if (inSession) {
            events.step(nowMillis);
        }
        if (nowMillis >= nextStatusAtMillis) {
            nextStatusAtMillis = nowMillis + STATUS_MILLIS;
            outbox.add(account.status(nowMillis));
        }
        if (nowMillis >= nextIdentityAtMillis) {
            introduce(nowMillis);
        }
    }

    /** Says who this is, now. */
    void introduce(long nowMillis) {
        nextIdentityAtMillis = nowMillis + IDENTITY_MILLIS;
        outbox.add(account.identity());
    }

    private static Optional<Sampler> pump(Outputs outputs) {
        if (outputs.waterPump()) {
            return WATER;
        }
        return outputs.airPump() ? AIR : Optional.empty();
    }
}
