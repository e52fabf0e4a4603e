package ouzel.app.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ouzel.app.desk.DeskState.StatusHeard;
import ouzel.app.desk.Draw.Mark;
import ouzel.app.desk.Note.Weight;
import ouzel.app.estimate.Amount;
import ouzel.app.estimate.DrawEstimate;
import ouzel.app.estimate.PumpModel;
import ouzel.protocol.frame.Header;
import ouzel.protocol.message.CurrentTrace;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.message.Status;
import ouzel.protocol.message.ValveWaveform;

/** What the payload's regular reports do to the state. */
final class Telemetry {
    /** A hole in the trace longer than this is not filled in: the draw is another one, samples. */
    private static final int LONGEST_HOLE = 3_000;
    /** Without a session, what comes later than this is not late but from a payload with a new memory, ms. */
    private static final long LATEST_MILLIS = 10_000;
    /**
     * The payload's clock is believed to run slow by at most one part in this many: lateness is told from a clock that
     * stood still (a computer that hosts a simulated payload and slept) by forgiving a fifth of a second each second.
     */
    private static final long DRIFT = 5;
    /** No draw is longer, ten minutes: whoever sends more than that is no payload, and fills no memory here. */
    private static final int LONGEST_DRAW = 10 * 60 * CurrentTrace.RATE_HZ;

    private Telemetry() {}

    static void identity(Turn turn, Header header, Identity identity) {
        if (turn.identity.isEmpty()) {
            turn.note(
                    Weight.PLAIN,
                    "Payload " + header.payload() + " is " + identity.firmware()
                            + (identity.simulated() ? ", simulated." : "."));
            if (identity.simulated() != turn.plan.rehearsal()) {
                turn.note(
                        Weight.PINNED,
                        identity.simulated()
                                ? "This payload is a simulated one, but this desk is not a rehearsal: close it and open"
                                        + " it with --rehearsal, so that the records are not mixed."
                                : "This payload is a REAL one, but this desk is a rehearsal: close it before anyone"
                                        + " goes near the payload.");
            }
        }
        turn.identity = Optional.of(identity);
    }

    /** Takes a status; false if it was overtaken on the way and says nothing that is still so. */
    static boolean status(Turn turn, Header header, Status status) {
        Optional<Moment> said = saidAt(turn, header, status);
        if (said.isEmpty()) {
            return false;
        }
        turn.status = Optional.of(new StatusHeard(status, header.timeMillis(), said.get(), ownSession(turn, status)));
        long known = turn.ledger.bootCount();
        if (known >= 0 && known != status.bootCount()) {
            turn.note(
                    Weight.PINNED,
                    "The payload restarted (start " + known + " -> " + status.bootCount()
                            + "): all outputs off. Ask yourself why before you arm again.");
        }
        if (known != status.bootCount()) {
            turn.bootCount(status.bootCount());
        }
        for (Sampler sampler : Sampler.values()) {
            armedUntil(turn, turn.lane(sampler), status);
        }
        return true;
    }

    /**
     * When a status was said, as far as the payload's own clock tells: never later than now, and much earlier if a
     * modem or a laptop that stood still held it back. Empty if it is older than the one that stands.
     */
    private static Optional<Moment> saidAt(Turn turn, Header header, Status status) {
        if (turn.status.isEmpty()) {
            return Optional.of(turn.now);
        }
        StatusHeard before = turn.status.get();
        // Both run modulo: starts in 16 bits, the clock in 32; the differences are small and signed.
        int starts = (short) (status.bootCount() - before.status().bootCount());
        long apartMillis = (int) (header.timeMillis() - before.payloadMillis());
        boolean isOlder = starts < 0 || starts == 0 && apartMillis < 0;
        if (isOlder && isLate(turn, before, status)) {
            return Optional.empty();
        }
        if (isOlder || starts > 0) {
            return Optional.of(turn.now);
        }
        long driftMillis = apartMillis / DRIFT;
        Moment expected = before.at().plusMillis(apartMillis + driftMillis);
        return Optional.of(expected.nanos() < turn.now.nanos() ? expected.withUtcOf(turn.now) : turn.now);
    }

    /**
     * Whether a status older than the one that stands came late, or comes from a payload with a new memory. Within a
     * session no clock goes back, and a payload that restarts loses the session first.
     */
    private static boolean isLate(Turn turn, StatusHeard before, Status status) {
        if (!turn.session.open()) {
            return turn.now.millisSince(before.at()) < LATEST_MILLIS;
        }
        return status.session() != turn.session.number() || status.session() == before.ownSession();
    }

    private static long ownSession(Turn turn, Status status) {
        boolean isOwn = turn.session.open() && status.session() == turn.session.number();
        return isOwn
                ? status.session()
                : turn.status.map(StatusHeard::ownSession).orElse(0L);
    }

    /** The payload's own count of the token's life corrects the console's. */
    private static void armedUntil(Turn turn, Lane lane, Status status) {
        if (status.state(lane.sampler()) == SamplerState.ARMED) {
            Moment until = new Moment(
                    turn.now.nanos() + status.armLifeMillis() * 1_000_000L,
                    turn.now.utcMillis() + status.armLifeMillis());
            turn.put(lane.withToken(lane.token(), Optional.of(until)));
        } else if (lane.armedUntil()
                .filter(until -> until.nanos() < turn.now.nanos())
                .isPresent()) {
            turn.put(lane.withToken(0, Optional.empty()));
        }
    }

    static void trace(Turn turn, CurrentTrace trace) {
        Lane lane = turn.lane(trace.sampler());
        if (lane.draw().isEmpty() || lane.draw().get().current().length() > trace.firstSample() + LONGEST_HOLE) {
            return;
        }
        Draw draw = lane.draw().get();
        long ahead = trace.firstSample() - draw.current().length();
        boolean isKnown = -ahead >= trace.milliamps().size();
        boolean isTooLong = trace.firstSample() + trace.milliamps().size() > LONGEST_DRAW;
        if (isKnown || isTooLong || ahead > LONGEST_HOLE) {
            return;
        }
        int from = (int) -ahead;
        int millivolts = turn.status
                .map(heard -> heard.status().readings().batteryMillivolts())
                .orElse(0);
        List<Integer> fresh = new ArrayList<>();
        int missing = Math.max(0, -from);
        int last = draw.current().length() == 0
                ? 0
                : draw.current().at(draw.current().length() - 1);
        for (int i = 0; i < missing; i++) {
            fresh.add(last);
        }
        fresh.addAll(
                trace.milliamps().subList(Math.max(0, from), trace.milliamps().size()));
        turn.put(lane.withDraw(lengthened(draw, Pumps.of(trace.sampler()), fresh, millivolts, missing)));
    }

    private static Draw lengthened(Draw draw, PumpModel pump, List<Integer> fresh, int millivolts, int missing) {
        DrawEstimate estimate = draw.estimate();
        int gaps = draw.missing() + missing;
        List<Integer> fill = new ArrayList<>(fresh.size());
        List<Integer> band = new ArrayList<>(fresh.size());
        List<Mark> marks = new ArrayList<>(draw.marks());
        for (int milliamps : fresh) {
            DrawEstimate next = estimate.next(pump, milliamps, millivolts);
            if (pump.primes() && next.wet() != estimate.wet()) {
                marks.add(new Mark(next.samples() / 100.0, next.wet() ? "primed" : "dry"));
            }
            estimate = next;
            Amount amount = estimate.amount(pump, gaps);
            fill.add((int) Math.round(10 * amount.value()));
            band.add((int) Math.round(10 * amount.band()));
        }
        return new Draw(
                draw.orderId(),
                draw.started(),
                draw.ended(),
                draw.current().append(fresh),
                gaps,
                draw.fill().append(fill),
                draw.band().append(band),
                estimate,
                marks);
    }

    static void waveform(Turn turn, ValveWaveform piece) {
        Lane lane = turn.lane(piece.sampler());
        Stroke known = lane.stroke().orElse(Stroke.unseen(0, turn.now));
        turn.put(lane.withStroke(known.with(piece)));
    }
}
