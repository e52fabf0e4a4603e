package ouzel.app.desk;

import java.util.List;
import java.util.Optional;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Status;
import ouzel.protocol.session.LinkHealth;

/**
 * All that the desk knows at one moment. Immutable; only {@link Desk#fold} makes the next one.
 *
 * @param now the moment of the last stimulus
 * @param plan what this desk was opened with
 * @param line the port
 * @param session the session with the payload
 * @param status the payload's last status and when it came; empty before the first
 * @param identity who the payload is; empty before it said so
 * @param link the last measurement of the link
 * @param journal whether the journal is written
 * @param lanes one per sampler, in the order of {@link Sampler}
 * @param safeAll the last safe-all order
 * @param attestations what people confirmed and has not run out
 * @param samples what was brought aboard, oldest first
 * @param notes the journal list, newest first, at most {@value #MOST_NOTES}
 * @param ledger numbers that the fold counts with
 * @param settling draws and strokes that have ended and wait for the rest of their trace
 */
public record DeskState(
        Moment now,
        Plan plan,
        Line line,
        Session session,
        Optional<StatusHeard> status,
        Optional<Identity> identity,
        LinkHealth link,
        JournalHealth journal,
        List<Lane> lanes,
        Optional<OrderTrack> safeAll,
        List<Attestation> attestations,
        List<Sample> samples,
        List<Note> notes,
        Ledger ledger,
        List<Sampling.Ended> settling) {

    /** Most notes kept in the list; older ones are in the journal file only. */
    public static final int MOST_NOTES = 400;

    /** A value older than this is not known any more, ms. */
    public static final long STALE_AFTER_MILLIS = 1_000;

    /**
     * What the desk was opened with.
     *
     * @param rehearsal true if the payload is a simulated one
     * @param site the site's name
     */
    public record Plan(boolean rehearsal, String site) {}

    /**
     * The port.
     *
     * @param up true if bytes can flow
     * @param sentence where, or why not
     */
    public record Line(boolean up, String sentence) {}

    /**
     * The session.
     *
     * @param open true if orders can be sealed
     * @param payload the payload's number, 0 if there is none
     * @param number the session's public number, 0 if there is none
     * @param sentence why there is none; empty if there is
     */
    public record Session(boolean open, int payload, long number, String sentence) {}

    /**
     * The payload's last status.
     *
     * @param status what it said
     * @param payloadMillis its clock then, ms since its start
     * @param at when it said so, as far as the console can tell; never later than it was heard
     * @param ownSession the last session of this desk that a status has named, 0 if none has
     */
    public record StatusHeard(Status status, long payloadMillis, Moment at, long ownSession) {}

    /**
     * Whether what happens is written down.
     *
     * @param writing true if it is
     * @param sentence why not; empty if it is
     */
    public record JournalHealth(boolean writing, String sentence) {}

    /**
     * Numbers that the fold counts with.
     *
     * @param nextOrderId id of the next order
     * @param nextNote number of the next note
     * @param nextSample number of the next sample
     * @param newestEvent newest event heard without a gap before it, 0 before the first
     * @param newestEventAt when that event was heard
     * @param acknowledgedEvent newest event the payload was told to forget
     * @param eventsAskedAt when events were last fetched or acknowledged
     * @param bootCount the controller start that is known, -1 before the first status
     */
    public record Ledger(
            long nextOrderId,
            long nextNote,
            int nextSample,
            long newestEvent,
            Moment newestEventAt,
            long acknowledgedEvent,
            Moment eventsAskedAt,
            long bootCount) {

        static Ledger fresh(long firstOrderId, Moment now) {
            return new Ledger(firstOrderId, 1, 1, 0, now, 0, now, -1);
        }

        Ledger withNextOrderId(long next) {
            return new Ledger(
                    next,
                    nextNote,
                    nextSample,
                    newestEvent,
                    newestEventAt,
                    acknowledgedEvent,
                    eventsAskedAt,
                    bootCount);
        }

        Ledger withNextNote(long next) {
            return new Ledger(
                    nextOrderId,
                    next,
                    nextSample,
                    newestEvent,
                    newestEventAt,
                    acknowledgedEvent,
                    eventsAskedAt,
                    bootCount);
        }

        Ledger withNextSample(int next) {
            return new Ledger(
                    nextOrderId,
                    nextNote,
                    next,
                    newestEvent,
                    newestEventAt,
                    acknowledgedEvent,
                    eventsAskedAt,
                    bootCount);
        }

        Ledger withNewestEvent(long newest, Moment at) {
            return new Ledger(
                    nextOrderId, nextNote, nextSample, newest, at, acknowledgedEvent, eventsAskedAt, bootCount);
        }

        Ledger withEventsAsked(long acknowledged, Moment at) {
            return new Ledger(
                    nextOrderId, nextNote, nextSample, newestEvent, newestEventAt, acknowledged, at, bootCount);
        }

        Ledger withBootCount(long count) {
            return new Ledger(
                    nextOrderId,
                    nextNote,
                    nextSample,
                    newestEvent,
                    newestEventAt,
                    acknowledgedEvent,
                    eventsAskedAt,
                    count);
        }
    }

    /** Copies the lists. */
    public DeskState {
        lanes = List.copyOf(lanes);
        attestations = List.copyOf(attestations);
        samples = List.copyOf(samples);
        notes = List.copyOf(notes);
        settling = List.copyOf(settling);
    }

    /** The lane of one sampler. */
    public Lane lane(Sampler sampler) {
        return lanes.get(sampler.ordinal());
    }

    /** Age of the last status at {@link #now()}, ms; {@link Long#MAX_VALUE} before the first. */
    public long statusAgeMillis() {
        return status.map(heard -> now.millisSince(heard.at())).orElse(Long.MAX_VALUE);
    }

    /** True if a session is open, and the last status is of this session and young enough to act on. */
    public boolean isLinkFresh() {
        return line.up() && session.open() && isOfSession() && statusAgeMillis() <= STALE_AFTER_MILLIS;
    }

    /** A payload that names no session or another's has started again or been taken over: its word is none for us. */
    private boolean isOfSession() {
        return status.filter(heard -> heard.status().session() == session.number())
                .isPresent();
    }

    /** True if anything is armed or moving, or may be for all the console knows. */
    public boolean isAnythingLive() {
        return lanes.stream()
                .anyMatch(lane -> lane.phase() == Phase.ARMED || lane.phase().isActing() || lane.isUnresolved());
    }
}
