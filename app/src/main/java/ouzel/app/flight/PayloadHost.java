package ouzel.app.flight;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import ouzel.app.link.FrameServer;
import ouzel.app.link.Line;
import ouzel.app.link.LineListener;
import ouzel.app.link.LinkLoop;
import ouzel.app.link.Port;
import ouzel.app.link.Reconnector;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.ParserCounts;
import ouzel.protocol.session.PairingKey;
import ouzel.simulator.plant.Surroundings.Place;
import ouzel.simulator.profile.ProfileFile;
import ouzel.simulator.rehearsal.Pilot;
import ouzel.simulator.rehearsal.PlanPilot;
import ouzel.simulator.rehearsal.SimulatedPayload;
import ouzel.simulator.rehearsal.Site;

/**
 * The simulated payload as a program of its own, reached over TCP or a serial line.
 *
 * <p>Its pilot flies the plan by himself: aloft until the air sampler is used, then to the water, then to the ground.
 * Whoever asks for a place gets it.
 *
 * <p><b>Thread:</b> any for the public methods.
 */
public final class PayloadHost implements AutoCloseable {
    private final LinkLoop loop = new LinkLoop();
    private final Consumer<String> say;
    private final SimulatedPayload payload;
    private final PlanPilot plan;
    private final CountDownLatch ended = new CountDownLatch(1);
    private Line line;
    private LivePayload live;

    /**
     * What a payload is hosted with.
     *
     * @param serial the serial line it speaks on; empty for TCP
     * @param tcpPort the TCP port it waits on, 0 for any free one
     * @param anyHost true to be reached from other computers too
     * @param key the pairing key
     * @param seed what makes this unit
     */
    public record Request(Optional<Port.Serial> serial, int tcpPort, boolean anyHost, PairingKey key, long seed) {
        /** Refuses the rehearsal key, which everybody knows, on a serial line. */
        public Request {
            SerialKey.require(serial.isPresent(), key);
        }
    }

    /**
     * Starts the payload and opens its line.
     *
     * @param say told each change of the line in a sentence, on the link thread
     */
    public PayloadHost(Request request, Consumer<String> say) {
        this.say = say;
        Pilot pilot = new Pilot(Site.QUARRY);
        payload = new SimulatedPayload(
                SimulatedPayload.reference(ProfileFile.reference(), request.seed(), request.key(), Randomness::next),
                pilot);
        plan = new PlanPilot(payload);
        loop.execute(() -> start(request));
    }

    private void start(Request request) {
        line = request.serial().isPresent()
                ? Reconnector.start(loop, request.serial().get(), new Ear())
                : server(request);
        live = new LivePayload(loop, payload, millis -> {
            plan.step();
            payload.takeFrames().forEach(line::send);
        });
    }

    private FrameServer server(Request request) {
        FrameServer server = request.anyHost()
                ? FrameServer.onAllNetworks(loop, request.tcpPort(), new Ear())
                : FrameServer.onThisComputer(loop, request.tcpPort(), new Ear());
        server.boundPort().thenAccept(port -> say.accept("Waiting for a console on TCP port " + port + "."));
        return server;
    }

    /** Asks the pilot to go somewhere; he stays there until he is asked again. */
    public void askPilot(Place place) {
        loop.execute(() -> plan.ask(place));
    }

    /** Waits until {@link #close} was called. */
    public void awaitClosed() throws InterruptedException {
        ended.await();
    }

    @Override
    public void close() {
        loop.close();
        ended.countDown();
    }

    private final class Ear implements LineListener {
        @Override
        public void opened(String where) {
            say.accept("Line open: " + where + ".");
        }

        @Override
        public void frame(Frame frame, long nowNanos) {
            live.hear(frame);
        }

        @Override
        public void counts(ParserCounts counts) {
            // The payload reports what it refused in its status.
        }

        @Override
        public void garbled(String sentence) {
            say.accept(sentence);
        }

        @Override
        public void lost(String sentence) {
            say.accept(sentence);
        }

        @Override
        public void failed(String sentence) {
            say.accept(sentence);
        }
    }
}
