package ouzel.simulator.controller;

import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.session.Envelope;
import ouzel.simulator.plant.Outputs;
import ouzel.simulator.plant.Sensed;

/** The authority on board. */
public final class Controller {
    private Outputs outputs = Outputs.OFF;

    /** Starts the controller over its memory. */
    public Controller(NonVolatile memory, Limits limits, LongSupplier tokens, int capabilities, BootCause cause) {}

    /** One step. */
    public Outputs step(long nowMillis, Sensed sensed) {
        return outputs;
    }

    /** Takes one verified order. */
    public void accept(Envelope envelope, long nowMillis) {}

    /** A new session is in force. */
    public void sessionOpened(long session, long nowMillis) {}

    /** Frames the link session has refused so far, for the status. */
    public void framesRefused(int total) {}

    /** What is driven now. */
    public Outputs outputs() {
        return outputs;
    }

    /** The next message to send, most urgent first. */
    public Optional<Downlink> poll() {
        return Optional.empty();
    }

    /** All messages to send, most urgent first. */
    public List<Downlink> drain() {
        return List.of();
    }
}
