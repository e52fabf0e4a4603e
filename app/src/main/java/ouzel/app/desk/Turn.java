package ouzel.app.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import ouzel.app.desk.DeskState.JournalHealth;
import ouzel.app.desk.DeskState.Ledger;
import ouzel.app.desk.DeskState.Line;
import ouzel.app.desk.DeskState.Plan;
import ouzel.app.desk.DeskState.Session;
import ouzel.app.desk.DeskState.StatusHeard;
import ouzel.app.desk.Note.Weight;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.session.LinkHealth;

/**
 * One fold in the making: the state as it is being changed, and the effects so far.
 *
 * <p>Lives only inside {@link Desk#fold}; what goes in and comes out is immutable.
 */
final class Turn {
    final DeskState before;
    final Moment now;

    Plan plan;
    Line line;
    Session session;
    Optional<StatusHeard> status;
    Optional<Identity> identity;
    LinkHealth link;
    JournalHealth journal;
    Optional<OrderTrack> safeAll;
    List<Attestation> attestations;
    List<Sample> samples;
    Ledger ledger;

    private final List<Lane> lanes;
    private final List<Effect> effects = new ArrayList<>();
    private List<Note> notes;
    private List<Sampling.Ended> settling;

    Turn(DeskState before, Moment now) {
        this.before = before;
        this.now = now;
        this.plan = before.plan();
        this.line = before.line();
        this.session = before.session();
        this.status = before.status();
        this.identity = before.identity();
        this.link = before.link();
        this.journal = before.journal();
        this.safeAll = before.safeAll();
        this.attestations = before.attestations();
        this.samples = before.samples();
        this.ledger = before.ledger();
        this.lanes = new ArrayList<>(before.lanes());
        this.notes = before.notes();
        this.settling = before.settling();
    }

    /** The state as it stands in this turn; also what conditions are judged by. */
    DeskState state() {
        return new DeskState(
                now,
                plan,
                line,
                session,
                status,
                identity,
                link,
                journal,
                lanes,
                safeAll,
                attestations,
                samples,
                notes,
                ledger,
                settling);
    }

    /** As {@link DeskState#isLinkFresh()}, without making the state. */
    boolean isLinkFresh() {
        return line.up()
                && session.open()
                && status.filter(heard -> heard.status().session() == session.number())
                        .filter(heard -> now.millisSince(heard.at()) <= DeskState.STALE_AFTER_MILLIS)
                        .isPresent();
    }

    Desk.Step step() {
        return new Desk.Step(state(), effects);
    }

    Lane lane(Sampler sampler) {
        return lanes.get(sampler.ordinal());
    }

    List<Lane> lanes() {
        return List.copyOf(lanes);
    }

    void put(Lane lane) {
        lanes.set(lane.sampler().ordinal(), lane);
    }

    void change(Sampler sampler, UnaryOperator<Lane> change) {
        put(change.apply(lane(sampler)));
    }

    void effect(Effect effect) {
        effects.add(effect);
    }

    void sound(Effect.Cue cue) {
        effect(new Effect.Sound(cue));
    }

    /** Opens the desk for {@code opened}. */
    void open(Plan opened, long firstOrderId) {
        plan = opened;
        ledger = Ledger.fresh(firstOrderId, now);
    }

    /** A draw or stroke ended; it is graded once the rest of its trace had time to come. */
    void ended(Sampling.Ended ended) {
        List<Sampling.Ended> next = new ArrayList<>(settling);
        next.add(ended);
        settling = next;
    }

    /** Takes out what ended at least {@code millis} ago by the console's clock, or whose end was learnt late. */
    List<Sampling.Ended> settled(long millis) {
        if (settling.isEmpty()) {
            return List.of();
        }
        List<Sampling.Ended> ripe = settling.stream()
                .filter(ended -> now.millisSince(ended.at()) >= millis)
                .toList();
        settling = settling.stream().filter(ended -> !ripe.contains(ended)).toList();
        return ripe;
    }

    /** Takes the next order id. */
    long nextOrderId() {
        long id = ledger.nextOrderId();
        // Id 0 means "gets no outcome", so the count goes from 2^32 - 1 to 1.
        long next = id == 0xFFFF_FFFFL ? 1 : id + 1;
        ledger = ledger.withNextOrderId(next);
        return id;
    }

    int nextSample() {
        int number = ledger.nextSample();
        ledger = ledger.withNextSample(number + 1);
        return number;
    }

    /** Everything up to event {@code newest} has been heard without a gap. */
    void newestEvent(long newest) {
        ledger = ledger.withNewestEvent(newest, now);
    }

    /** Events were fetched, or acknowledged up to {@code acknowledged}. */
    void eventsAsked(long acknowledged) {
        ledger = ledger.withEventsAsked(acknowledged, now);
    }

    void bootCount(long count) {
        ledger = ledger.withBootCount(count);
    }

    void send(long orderId, Order order, long lifeMillis, Effect.Urgency urgency) {
        effect(new Effect.Send(orderId, order, lifeMillis, urgency));
    }

    void note(Weight weight, String sentence) {
        note(Optional.empty(), weight, sentence, now);
    }

    void note(Sampler sampler, Weight weight, String sentence) {
        note(Optional.of(sampler), weight, sentence, now);
    }

    void note(Optional<Sampler> sampler, Weight weight, String sentence, Moment at) {
        List<Note> next = new ArrayList<>(Math.min(notes.size() + 1, DeskState.MOST_NOTES));
        next.add(new Note(ledger.nextNote(), at, sampler, weight, sentence));
        next.addAll(notes.subList(0, Math.min(notes.size(), DeskState.MOST_NOTES - 1)));
        notes = next;
        ledger = ledger.withNextNote(ledger.nextNote() + 1);
        if (weight == Weight.PINNED) {
            sound(Effect.Cue.ATTENTION);
        }
    }

    /** Takes the pin off every note that {@code which} names. */
    void unpin(Predicate<Note> which) {
        notes = notes.stream()
                .map(note -> note.weight() == Weight.PINNED && which.test(note) ? note.resolved() : note)
                .toList();
    }

    /** The console's moment of an instant on the payload's clock, by the last status; {@code now} without one. */
    Moment atPayload(long payloadMillis) {
        if (status.isEmpty()) {
            return now;
        }
        StatusHeard heard = status.get();
        // Both clocks run modulo 2^32 ms; the difference is small and signed.
        long apart = (int) (payloadMillis - heard.payloadMillis());
        return new Moment(heard.at().nanos() + apart * 1_000_000, heard.at().utcMillis() + apart);
    }
}
