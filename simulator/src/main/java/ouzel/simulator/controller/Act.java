package ouzel.simulator.controller;

import java.util.Optional;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.simulator.plant.Outputs;

/** What one trigger sets going: the only source of a driven output. */
sealed interface Act permits PumpedDraw, SoilStroke {
    Sampler sampler();

    /** The trigger order it acts on. */
    long orderId();

    /** Bits of the permissives attested for it. */
    int attested();

    /** What it drives now. */
    Outputs outputs();

    /** Time since it began, ms. */
    long runMillis(long nowMillis);

    /** True if it goes on to its own end when the console is no longer heard. */
    boolean finishesAlone();

    /** One step; the ending once it is over. */
    Optional<Ending> step(Instruments instruments, PermissiveWatch watch, long nowMillis);

    /**
     * Switches its output off at once. A pump has then ended; a stroke ends when the probe is home again, or is found
     * not to be.
     */
    Optional<Ending> stop(Reason reason, int measured, int limit, long nowMillis);
}
