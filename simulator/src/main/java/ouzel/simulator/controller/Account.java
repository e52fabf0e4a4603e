package ouzel.simulator.controller;

import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.Status;

/** Draws up the payload's account of itself. */
final class Account {
    private static final String FIRMWARE = "ouzel rehearsal 0.1.0";
    private static final int UNSIGNED_16 = 0xFFFF;

    private final NonVolatile memory;
    private final int capabilities;
    private final Instruments instruments;
    private final PermissiveWatch watch;
    private final Samplers samplers;
    private long session;
    private int refusedFrames;

    Account(NonVolatile memory, int capabilities, Instruments instruments, PermissiveWatch watch, Samplers samplers) {
        this.memory = memory;
        this.capabilities = capabilities;
        this.instruments = instruments;
        this.watch = watch;
        this.samplers = samplers;
    }

    void sessionOpened(long opened) {
        session = opened;
    }

    boolean isInSession() {
        return session != 0;
    }

    void framesRefused(int total) {
        refusedFrames = Math.min(total, UNSIGNED_16);
    }

    Identity identity() {
        return new Identity(
                FIRMWARE, capabilities, memory.bootCount(), MessageCodec.settingsCheck(memory.settings()), true);
    }

    Status status(long nowMillis) {
        return new Status(
                session,
                samplers.states(),
                samplers.armed().map(armed -> armed.lifeLeftMillis(nowMillis)).orElse(0),
                watch.met(samplers.active(), samplers.attested(), nowMillis),
                memory.events().newest(),
                memory.events().oldest(),
                refusedFrames,
                samplers.metered(nowMillis),
                (int) Math.min(samplers.runMillis(nowMillis), UNSIGNED_16),
                memory.strokesUsed(),
                (int) (memory.bootCount() & UNSIGNED_16),
                instruments.readings());
    }
}
