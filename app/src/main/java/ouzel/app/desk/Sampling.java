package ouzel.app.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ouzel.app.desk.Note.Weight;
import ouzel.app.estimate.Amount;
import ouzel.app.estimate.DrawEstimate;
import ouzel.app.estimate.PumpModel;
import ouzel.app.estimate.Verdict;
import ouzel.app.estimate.Verdicts;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;

/** Turns an ended draw or stroke into a sample with its verdict, once all that belongs to it has come. */
public final class Sampling {
    /** Time that the rest of a trace or waveform gets to arrive after the end, ms. */
    static final long SETTLE_MILLIS = 1_500;

    /** Core of the reference probe in soft ground, g, and its standard uncertainty: nothing on board weighs it. */
    private static final Amount NOMINAL_CORE = new Amount(3.6, 0.6);

    private Sampling() {}

    /**
     * A draw or stroke that has ended and is not graded yet.
     *
     * @param event how it ended, by the payload
     * @param at when it ended
     * @param askedDose what had been asked
     */
    public record Ended(Event event, Moment at, int askedDose) {}

    static void drawEnded(Turn turn, Event event, Moment at) {
        turn.ended(new Ended(event, at, asked(turn.lane(event.sampler()))));
    }

    static void strokeEnded(Turn turn, Event event, Moment at) {
        turn.ended(new Ended(event, at, asked(turn.lane(event.sampler()))));
    }

    private static int asked(Lane lane) {
        Optional<Order> order = lane.arm().map(OrderTrack::order);
        return order.isPresent() && order.get() instanceof Arm arm ? arm.dose() : lane.dose();
    }

    /** Grades what has settled. */
    static void tick(Turn turn) {
        for (Ended ended : turn.settled(SETTLE_MILLIS)) {
            boolean isKnown = turn.samples.stream()
                    .anyMatch(sample -> sample.orderId() == ended.event().orderId());
            if (!isKnown) {
                add(turn, sample(turn, ended));
            }
        }
    }

    private static Sample sample(Turn turn, Ended ended) {
        Sampler sampler = ended.event().sampler();
        Lane lane = turn.lane(sampler);
        Optional<String> ending = ending(ended.event());
        Amount got;
        Verdict verdict;
        Moment started = ended.at();
        if (sampler.isPumped()) {
            Optional<Draw> draw =
                    lane.draw().filter(known -> known.orderId() == ended.event().orderId());
            PumpModel pump = Pumps.of(sampler);
            got = draw.map(known -> known.estimate().amount(pump, known.missing()))
                    .orElse(Amount.NONE);
            started = draw.map(Draw::started).orElse(started);
            verdict = Verdicts.ofDraw(new Verdicts.DrawFacts(
                    pump,
                    ended.askedDose(),
                    got,
                    draw.map(Draw::estimate).orElse(DrawEstimate.START),
                    draw.map(Draw::missing).orElse(0),
                    ended.event().value(),
                    ending));
        } else {
            Optional<Stroke> stroke = lane.stroke()
                    .filter(known -> known.orderId() == ended.event().orderId());
            started = stroke.map(Stroke::started).orElse(started);
            verdict = Verdicts.ofStroke(
                    stroke.flatMap(Stroke::reading), ending, ended.event().value());
            got = verdict.grade() == Verdict.Grade.VOID ? Amount.NONE : NOMINAL_CORE;
        }
        return new Sample(
                turn.nextSample(),
                sampler,
                turn.plan.site(),
                ended.event().orderId(),
                ended.askedDose(),
                got,
                OptionalDouble.empty(),
                verdict,
                started,
                ended.at());
    }

    private static Optional<String> ending(Event event) {
        return switch (event.kind()) {
            case DRAW_COMPLETED, STROKE_COMPLETED -> Optional.empty();
            default ->
                Optional.of(
                        event.reason() == Reason.NONE ? "ended early" : "ended early: " + Words.brief(event.reason()));
        };
    }

    private static void add(Turn turn, Sample sample) {
        List<Sample> next = new ArrayList<>(turn.samples);
        next.add(sample);
        turn.samples = next;
        boolean accepted = sample.verdict().grade() == Verdict.Grade.ACCEPTED;
        turn.note(
                sample.sampler(),
                accepted ? Weight.PLAIN : Weight.PINNED,
                "Sample " + sample.number() + " " + sample.verdict().grade().word() + ", "
                        + sample.got().text(sample.unit()) + ": "
                        + String.join("; ", sample.verdict().reasons()) + ".");
        turn.sound(accepted ? Effect.Cue.COMPLETED : Effect.Cue.ATTENTION);
    }

    /** What the simulated plant really holds: belongs to the newest sample of that sampler. */
    static void truth(Turn turn, Sampler sampler, double amount) {
        List<Sample> next = new ArrayList<>(turn.samples);
        for (int i = next.size() - 1; i >= 0; i--) {
            if (next.get(i).sampler() == sampler) {
                next.set(i, next.get(i).withTruth(amount));
                break;
            }
        }
        turn.samples = next;
    }
}
