package ouzel.protocol.codec;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import ouzel.protocol.message.AcknowledgeEvents;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Bytes;
import ouzel.protocol.message.Challenge;
import ouzel.protocol.message.ChangeSettings;
import ouzel.protocol.message.Confirm;
import ouzel.protocol.message.CurrentTrace;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.FetchEvents;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.KeepAlive;
import ouzel.protocol.message.Open;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.QueryOutcome;
import ouzel.protocol.message.ReadSettings;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Reason;
import ouzel.protocol.message.Reload;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Settings;
import ouzel.protocol.message.Status;
import ouzel.protocol.message.Stop;
import ouzel.protocol.message.Trigger;
import ouzel.protocol.message.ValveWaveform;
import ouzel.protocol.message.VersionRefusal;

/** Any message at all, each kind over the whole range of each of its fields. */
public final class Messages {
    private Messages() {}

    /** Any order. */
    public static Arbitrary<Order> orders() {
        Arbitrary<Sampler> samplers = samplers();
        return Arbitraries.oneOf(
                Arbitraries.of(new Confirm(), new KeepAlive(), new SafeAll(), new ReadSettings()),
                Combinators.combine(samplers, Arbitraries.integers().between(1, 0xFFFF), any32())
                        .as(Arm::new),
                Combinators.combine(samplers, Arbitraries.longs()).as(Trigger::new),
                samplers.map(Stop::new),
                samplers.map(Reload::new),
                settings().map(ChangeSettings::new),
                unsigned32().map(AcknowledgeEvents::new),
                unsigned32().map(FetchEvents::new),
                unsigned32().map(QueryOutcome::new));
    }

    /** Any word to open with. */
    public static Arbitrary<Open> opens() {
        return bytes(16).map(Open::new);
    }

    /** Anything that a payload says. */
    public static Arbitrary<Downlink> downlinks() {
        return Arbitraries.oneOf(
                identities(),
                Combinators.combine(bytes(16), bytes(16), bytes(16)).as(Challenge::new),
                statuses(),
                Combinators.combine(samplers(), unsigned32(), samples(CurrentTrace.MOST_SAMPLES))
                        .as(CurrentTrace::new),
                waveforms(),
                events(),
                outcomes(),
                settings(),
                Combinators.combine(unsigned8(), unsigned8()).as(VersionRefusal::new));
    }

    private static Arbitrary<Identity> identities() {
        return Combinators.combine(
                        Arbitraries.strings().ascii().ofMaxLength(24),
                        any32(),
                        unsigned32(),
                        unsigned16(),
                        Arbitraries.of(true, false))
                .as(Identity::new);
    }

    private static Arbitrary<Status> statuses() {
        Arbitrary<List<SamplerState>> states =
                Arbitraries.of(SamplerState.values()).list().ofSize(3);
        Arbitrary<List<Long>> longs = unsigned32().list().ofSize(3);
        Arbitrary<List<Integer>> ints = unsigned16().list().ofSize(5);
        return Combinators.combine(longs, states, ints, any32(), unsigned8(), readings())
                .as((wide, three, narrow, met, strokes, readings) -> new Status(
                        wide.get(0),
                        three,
                        narrow.get(0),
                        met,
                        wide.get(1),
                        wide.get(2),
                        narrow.get(1),
                        narrow.get(2),
                        narrow.get(3),
                        strokes,
                        narrow.get(4),
                        readings));
    }

    /** Readings inside what the wire can say, with absent ones among them. */
    static Arbitrary<Readings> readings() {
        Arbitrary<Integer> upward = orAbsent(Arbitraries.integers().between(0, 0xFFFE));
        Arbitrary<Integer> bothWays = orAbsent(Arbitraries.integers().between(-32_767, 32_767));
        Arbitrary<Integer> small = orAbsent(Arbitraries.integers().between(0, 0xFE));
        return Combinators.combine(upward.list().ofSize(8), bothWays.list().ofSize(2), small, unsigned16())
                .as((up, both, strokes, switches) -> new Readings(
                        up.get(0),
                        up.get(1),
                        up.get(2),
                        up.get(3),
                        up.get(4),
                        both.get(0),
                        up.get(5),
                        both.get(1),
                        up.get(6),
                        up.get(7),
                        strokes,
                        switches));
    }

    private static Arbitrary<ValveWaveform> waveforms() {
        Arbitrary<List<Integer>> samples = samples(ValveWaveform.MOST_SAMPLES);
        return Combinators.combine(
                        samplers(), unsigned16(), Arbitraries.integers().between(0, 300), samples)
                .as((sampler, capture, first, piece) ->
                        new ValveWaveform(sampler, capture, first + piece.size(), first, piece));
    }

    private static Arbitrary<Event> events() {
        return Combinators.combine(
                        unsigned32(),
                        unsigned32(),
                        unsigned32(),
                        Arbitraries.of(Event.Kind.values()),
                        samplers(),
                        unsigned32(),
                        Arbitraries.of(Reason.values()),
                        any32())
                .as(Event::new);
    }

    private static Arbitrary<Outcome> outcomes() {
        return Combinators.combine(
                        unsigned32(),
                        Arbitraries.of(Outcome.Stage.values()),
                        Arbitraries.of(Reason.values()),
                        unsigned8(),
                        any32(),
                        any32(),
                        Arbitraries.longs(),
                        unsigned16())
                .as(Outcome::new);
    }

    private static Arbitrary<Settings> settings() {
        Arbitrary<List<Integer>> narrow = unsigned16().list().ofSize(5);
        Arbitrary<List<Long>> wide = unsigned32().list().ofSize(2);
        Arbitrary<List<Boolean>> alone = Arbitraries.of(true, false).list().ofSize(2);
        return Combinators.combine(
                        narrow, wide, unsigned8(), Arbitraries.integers().between(1_000, 10_000), alone)
                .as((limits, runs, strokes, life, policy) -> new Settings(
                        limits.get(0),
                        limits.get(1),
                        limits.get(2),
                        runs.get(0),
                        runs.get(1),
                        strokes,
                        limits.get(3),
                        limits.get(4),
                        life,
                        policy.get(0),
                        policy.get(1)));
    }

    private static Arbitrary<List<Integer>> samples(int most) {
        return Arbitraries.integers().between(0, 0xFFFE).list().ofMinSize(1).ofMaxSize(most);
    }

    private static Arbitrary<Sampler> samplers() {
        return Arbitraries.of(Sampler.values());
    }

    private static Arbitrary<Integer> orAbsent(Arbitrary<Integer> present) {
        return Arbitraries.oneOf(present, Arbitraries.just(Readings.ABSENT));
    }

    private static Arbitrary<Integer> unsigned8() {
        return Arbitraries.integers().between(0, 0xFF);
    }

    private static Arbitrary<Integer> unsigned16() {
        return Arbitraries.integers().between(0, 0xFFFF);
    }

    private static Arbitrary<Long> unsigned32() {
        return Arbitraries.longs().between(0, 0xFFFF_FFFFL);
    }

    private static Arbitrary<Integer> any32() {
        return Arbitraries.integers();
    }

    private static Arbitrary<Bytes> bytes(int length) {
        return Arbitraries.bytes().array(byte[].class).ofSize(length).map(Bytes::of);
    }
}
