package ouzel.app.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import ouzel.app.desk.Act;
import ouzel.app.desk.Condition;
import ouzel.app.desk.Moment;
import ouzel.app.desk.Stimulus;
import ouzel.protocol.codec.MessageCodec;
import ouzel.protocol.message.CurrentTrace;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.session.LinkHealth;

/** Stimuli of every kind, and runs of entries, for the journal's tests. */
final class Stimuli {
    private Stimuli() {}

    static Arbitrary<Stimulus> all() {
        return Arbitraries.oneOf(List.of(
                opened(),
                heard(),
                lineChanged(),
                sessions(),
                linkMeasured(),
                acts(),
                journalChanged(),
                notSent(),
                truthTold(),
                Arbitraries.just(new Stimulus.Ticked())));
    }

    static Arbitrary<Moment> moments() {
        return Combinators.combine(Arbitraries.longs(), Arbitraries.longs()).as(Moment::new);
    }

    /** {@code count} entries of mixed kinds, 20 ms apart. */
    static List<Entry> run(int count) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            entries.add(new Entry(new Moment(i * 20_000_000L, 1_790_000_000_000L + i * 20L), stimulus(i)));
        }
        return entries;
    }

    private static Stimulus stimulus(int i) {
        return switch (i % 4) {
            case 0 ->
                heard(
                        new CurrentTrace(
                                Sampler.WATER, i, IntStream.range(0, 10).boxed().toList()),
                        i);
            case 1 -> new Stimulus.Ticked();
            case 2 -> new Stimulus.Acted(new Act.Attest(Condition.PEOPLE_CLEAR, "observer"));
            default -> new Stimulus.LinkMeasured(LinkHealth.counted(i, 3, 0.97, 1, Double.NaN));
        };
    }

    static Stimulus heard(Downlink message, int sequence) {
        return new Stimulus.Heard(MessageCodec.encode(message, 7, sequence & 0xFFFF, sequence * 20L), message);
    }

    private static Arbitrary<Stimulus> opened() {
        return Combinators.combine(unsigned32(), flags(), Arbitraries.strings()).as(Stimulus.Opened::new);
    }

    private static Arbitrary<Stimulus> heard() {
        Arbitrary<Downlink> traces = Combinators.combine(
                        samplers(),
                        unsigned32(),
                        Arbitraries.integers()
                                .between(0, 0xFFFE)
                                .list()
                                .ofMinSize(1)
                                .ofMaxSize(40))
                .as(CurrentTrace::new);
        Arbitrary<Downlink> events = Combinators.combine(
                        unsigned32(),
                        unsigned32(),
                        Arbitraries.of(Event.Kind.values()),
                        samplers(),
                        Arbitraries.of(Reason.values()),
                        Arbitraries.integers())
                .as((number, time, kind, sampler, reason, value) ->
                        new Event(number, 3, time, kind, sampler, number, reason, value));
        Arbitrary<Downlink> outcomes = Combinators.combine(unsigned32(), Arbitraries.of(Outcome.Stage.values()))
                .as(Outcome::of);
        return Combinators.combine(Arbitraries.oneOf(List.of(traces, events, outcomes)), Arbitraries.integers())
                .as(Stimuli::heardWithin);
    }

    private static Stimulus heardWithin(Downlink message, int sequence) {
        return heard(message, sequence & 0xFFFF);
    }

    private static Arbitrary<Stimulus> lineChanged() {
        return Combinators.combine(flags(), Arbitraries.strings()).as(Stimulus.LineChanged::new);
    }

    private static Arbitrary<Stimulus> sessions() {
        Arbitrary<Stimulus> opened = Combinators.combine(Arbitraries.integers().between(0, 65_535), unsigned32())
                .as(Stimulus.SessionOpened::new);
        Arbitrary<Stimulus> lost = Arbitraries.strings().map(Stimulus.SessionLost::new);
        Arbitrary<Stimulus> stranger = Arbitraries.strings().map(Stimulus.StrangerHeard::new);
        return Arbitraries.oneOf(List.of(opened, lost, stranger));
    }

    private static Arbitrary<Stimulus> linkMeasured() {
        Arbitrary<Double> figures = Arbitraries.oneOf(List.of(Arbitraries.doubles(), Arbitraries.just(Double.NaN)));
        return Combinators.combine(
                        unsigned32(),
                        unsigned32(),
                        unsigned32(),
                        unsigned32(),
                        figures.list().ofSize(11))
                .as(Stimuli::measured)
                .map(Stimulus.LinkMeasured::new);
    }

    private static LinkHealth measured(long heard, long lost, long corrupt, long refused, List<Double> x) {
        return new LinkHealth(
                heard, lost, x.get(0), corrupt, x.get(1), x.get(2), x.get(3), x.get(4), x.get(5), x.get(6), x.get(7),
                x.get(8), refused, x.get(9), x.get(10));
    }

    private static Arbitrary<Stimulus> acts() {
        Arbitrary<Act> ofSampler = samplers()
                .flatMap(sampler -> Arbitraries.of(
                        new Act.Arm(sampler),
                        new Act.Trigger(sampler),
                        new Act.Stop(sampler),
                        new Act.Reload(sampler)));
        Arbitrary<Act> doses =
                Combinators.combine(samplers(), Arbitraries.integers()).as(Act.SetDose::new);
        Arbitrary<Act> attests = Combinators.combine(Arbitraries.of(Condition.values()), Arbitraries.strings())
                .as(Act.Attest::new);
        Arbitrary<Act> wholeDesk = Arbitraries.of(new Act.SafeAll(), new Act.Reconnect());
        Arbitrary<Act> seen = Arbitraries.longs().map(Act.Acknowledge::new);
        return Arbitraries.oneOf(List.of(ofSampler, doses, attests, seen, wholeDesk))
                .map(Stimulus.Acted::new);
    }

    private static Arbitrary<Stimulus> journalChanged() {
        return Combinators.combine(flags(), Arbitraries.strings()).as(Stimulus.JournalChanged::new);
    }

    private static Arbitrary<Stimulus> notSent() {
        return Combinators.combine(unsigned32(), Arbitraries.strings()).as(Stimulus.NotSent::new);
    }

    private static Arbitrary<Stimulus> truthTold() {
        return Combinators.combine(samplers(), Arbitraries.doubles()).as(Stimulus.TruthTold::new);
    }

    private static Arbitrary<Sampler> samplers() {
        return Arbitraries.of(Sampler.values());
    }

    private static Arbitrary<Boolean> flags() {
        return Arbitraries.of(true, false);
    }

    private static Arbitrary<Long> unsigned32() {
        return Arbitraries.longs().between(0, 0xFFFF_FFFFL);
    }
}
