package ouzel.app.flight;

import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicReference;
import ouzel.app.link.Line;
import ouzel.app.link.LineListener;
import ouzel.app.link.LinePair;
import ouzel.app.link.LinkLoop;
import ouzel.app.screen.PilotAsk;
import ouzel.app.screen.PilotFeed;
import ouzel.protocol.frame.Frame;
import ouzel.protocol.frame.ParserCounts;
import ouzel.simulator.plant.Surroundings.Place;
import ouzel.simulator.plant.Truth;
import ouzel.simulator.profile.ProfileFile;
import ouzel.simulator.radio.Radio;
import ouzel.simulator.radio.Weather;
import ouzel.simulator.rehearsal.Pilot;
import ouzel.simulator.rehearsal.SimulatedPayload;
import ouzel.simulator.rehearsal.Site;

/**
 * The simulated payload inside this program, at the far end of a simulated radio, and its pilot.
 *
 * <p><b>Thread:</b> link, but for the pilot's two methods.
 */
final class InnerRehearsal implements PilotFeed {
    private final LinkLoop loop;
    private final Pilot pilot;
    private final LivePayload live;
    private final Line consoleLine;
    private final SimulatedPayload payload;
    private final AtomicReference<String> says = new AtomicReference<>("");

    InnerRehearsal(LinkLoop loop, LiveDesk.Request request, LineListener console) {
        this.loop = loop;
        SplittableRandom chance = new SplittableRandom(request.seed());
        RadioWire up = new RadioWire(new Radio(Weather.LIGHT_LOSS, chance.nextLong()));
        RadioWire down = new RadioWire(new Radio(Weather.LIGHT_LOSS, chance.nextLong()));
        pilot = new Pilot(Site.named(request.site()).orElse(Site.QUARRY));
        payload = new SimulatedPayload(
                SimulatedPayload.reference(ProfileFile.reference(), chance.nextLong(), request.key(), Randomness::next),
                pilot);
        LinePair pair = LinePair.join(loop, console, new PayloadEar(), up, down);
        consoleLine = pair.console();
        live = new LivePayload(loop, payload, millis -> {
            payload.takeFrames().forEach(pair.payload()::send);
            up.deliver(millis);
            down.deliver(millis);
            says.set(pilot.says());
        });
    }

    /** What the simulated plant really holds now. Thread: link. */
    Truth truth() {
        return payload.truth();
    }

    Line consoleLine() {
        return consoleLine;
    }

    @Override
    public void ask(PilotAsk ask) {
        Place place =
                switch (ask) {
                    case HOVER -> Place.ALOFT;
                    case SET_DOWN_ON_WATER -> Place.AFLOAT;
                    case SET_DOWN_ON_GROUND -> Place.ON_GROUND;
                };
        loop.execute(() -> pilot.ask(place));
    }

    @Override
    public String says() {
        return says.get();
    }

    /** What the payload's end of the line hears goes to the payload. */
    private final class PayloadEar implements LineListener {
        @Override
        public void opened(String where) {
            // The payload speaks whether anyone is there or not.
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
            // The payload's parser counts what it could not read.
        }

        @Override
        public void lost(String sentence) {
            // Silence is all that a payload notices; its dead-man sees to it.
        }

        @Override
        public void failed(String sentence) {
            // Cannot happen inside one program.
        }
    }
}
