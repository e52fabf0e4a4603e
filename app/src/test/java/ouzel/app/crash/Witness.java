package ouzel.app.crash;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import ouzel.app.link.FrameServer;
import ouzel.app.link.LineListener;
import ouzel.app.link.LinkLoop;
import ouzel.protocol.codec.Decoded;
import ouzel.protocol.codec.Kind;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.ParserCounts;
import ouzel.protocol.message.Event;
import ouzel.protocol.session.PairingKey;
import ouzel.simulator.plant.Surroundings.Place;
import ouzel.simulator.profile.ProfileFile;
import ouzel.simulator.rehearsal.Pilot;
import ouzel.simulator.rehearsal.SimulatedPayload;
import ouzel.simulator.rehearsal.Site;

/**
 * A simulated payload on TCP that outlives the consoles, and remembers what reached it and what it said.
 *
 * <p>It keeps all in fields of the link thread; {@link #testimony()} copies them from there.
 */
final class Witness implements LineListener, AutoCloseable {
    private static final int SETTLED_AFTER_STEPS = 3_000;
    private static final int BODY_ORDER_ID = 4;
    private static final int BODY_FIELDS = 12;

    private final LinkLoop loop = new LinkLoop();
    private final SimulatedPayload payload;
    private final FrameServer server;
    private final Set<Long> hazardousOrders = new TreeSet<>();
    private final Map<Long, Event> events = new HashMap<>();
    private long acknowledged;
    private long steppedToNanos = loop.nowNanos();

    /**
     * What is known at the payload's end.
     *
     * @param hazardousOrders ids of every arm and trigger that arrived
     * @param events every event that was said, by number
     * @param acknowledged newest event that a console told it to forget
     */
    record Testimony(Set<Long> hazardousOrders, Map<Long, Event> events, long acknowledged) {}

    /** A payload that hovers already, waiting on a free port. */
    Witness(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        Pilot pilot = new Pilot(Site.QUARRY);
        payload = new SimulatedPayload(
                SimulatedPayload.reference(
                        ProfileFile.reference(), chance.nextLong(), PairingKey.rehearsal(), chance::nextLong),
                pilot);
        pilot.ask(Place.ALOFT);
        for (int i = 0; i < SETTLED_AFTER_STEPS; i++) {
            payload.step();
            payload.takeFrames().forEach(this::said);
        }
        server = FrameServer.onThisComputer(loop, 0, this);
        loop.every(Duration.ofMillis(SimulatedPayload.STEP_MILLIS), this::catchUp);
    }

    int port() {
        return server.boundPort().toCompletableFuture().join();
    }

    Testimony testimony() {
        return CompletableFuture.supplyAsync(
                        () -> new Testimony(Set.copyOf(hazardousOrders), Map.copyOf(events), acknowledged), loop)
                .join();
    }

    private void catchUp() {
        while (loop.nowNanos() - steppedToNanos >= SimulatedPayload.STEP_MILLIS * 1_000_000L) {
            steppedToNanos += SimulatedPayload.STEP_MILLIS * 1_000_000L;
            payload.step();
            for (Frame frame : payload.takeFrames()) {
                said(frame);
                server.send(frame);
            }
        }
    }

    private void said(Frame frame) {
        if (MessageCodec.decode(frame) instanceof Decoded.Known known && known.message() instanceof Event event) {
            events.put(event.number(), event);
        }
    }

    @Override
    public void frame(Frame frame, long nowNanos) {
        int kind = frame.header().kind();
        if (kind == Kind.ARM.code() || kind == Kind.TRIGGER.code()) {
            hazardousOrders.add(unsigned32(frame, BODY_ORDER_ID));
        } else if (kind == Kind.ACKNOWLEDGE_EVENTS.code()) {
            acknowledged = Math.max(acknowledged, unsigned32(frame, BODY_FIELDS));
        }
        payload.hear(frame);
    }

    /** Little-endian, as {@code PROTOCOL.md}, "Envelope", lays it out. */
    private static long unsigned32(Frame frame, int offset) {
        byte[] body = frame.body().toArray();
        long value = 0;
        for (int i = 3; i >= 0; i--) {
            value = value << 8 | Byte.toUnsignedInt(body[offset + i]);
        }
        return value;
    }

    @Override
    public void opened(String where) {
        // Consoles come and go; the payload speaks all the time.
    }

    @Override
    public void counts(ParserCounts counts) {
        // Loopback breaks nothing.
    }

    @Override
    public void garbled(String sentence) {
        throw new AssertionError(sentence);
    }

    @Override
    public void lost(String sentence) {
        // The end of a killed console.
    }

    @Override
    public void failed(String sentence) {
        throw new AssertionError(sentence);
    }

    @Override
    public void close() {
        loop.close();
    }
}
