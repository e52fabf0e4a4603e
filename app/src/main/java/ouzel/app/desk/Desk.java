package ouzel.app.desk;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import ouzel.app.desk.DeskState.JournalHealth;
import ouzel.app.desk.DeskState.Ledger;
import ouzel.app.desk.DeskState.Line;
import ouzel.app.desk.DeskState.Plan;
import ouzel.app.desk.DeskState.Session;
import ouzel.app.desk.Note.Weight;
import ouzel.protocol.message.CurrentTrace;
import ouzel.protocol.message.Downlink;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Identity;
import ouzel.protocol.message.Outcome;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Status;
import ouzel.protocol.message.ValveWaveform;
import ouzel.protocol.session.LinkHealth;

/**
 * The one function that changes what the desk knows.
 *
 * <p>Live flight, rehearsal and playback are this function fed by three sources. It asks no clock, opens no file and
 * keeps nothing: the same stimuli give the same states and effects, always.
 */
public final class Desk {
    /** Doses the samplers of the reference payload are opened with: mL, mL, ms. */
    private static final int[] OPENING_DOSES = {260, 600, 250};

    private Desk() {}

    /**
     * What a fold gives.
     *
     * @param state the next state
     * @param effects what the shell must do, in this order
     */
    public record Step(DeskState state, List<Effect> effects) {
        public Step {
            effects = List.copyOf(effects);
        }
    }

    /** The state before anything happened. */
    public static DeskState start(Moment now) {
        return new DeskState(
                now,
                new Plan(false, ""),
                new Line(false, "no port open"),
                new Session(false, 0, 0, "no session"),
                Optional.empty(),
                Optional.empty(),
                LinkHealth.NONE,
                new JournalHealth(true, ""),
                Arrays.stream(Sampler.values())
                        .map(sampler -> Lane.fresh(sampler, OPENING_DOSES[sampler.ordinal()]))
                        .toList(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Ledger.fresh(1, now),
                List.of());
    }

    /** The state and effects that {@code stimulus}, happening {@code now}, makes of {@code before}. */
    public static Step fold(DeskState before, Moment now, Stimulus stimulus) {
        Turn turn = new Turn(before, now);
        if (stimulus instanceof Stimulus.Ticked) {
            ticked(turn);
        } else if (stimulus instanceof Stimulus.Heard heard) {
            heard(turn, heard);
        } else if (stimulus instanceof Stimulus.Acted acted) {
            Acts.acted(turn, acted.act());
        } else if (stimulus instanceof Stimulus.LinkMeasured measured) {
            turn.link = measured.health();
        } else {
            rareThings(turn, stimulus);
        }
        for (Sampler sampler : Sampler.values()) {
            turn.change(sampler, lane -> lane.withPhase(phaseOf(turn, lane)));
        }
        return turn.step();
    }

    private static void rareThings(Turn turn, Stimulus stimulus) {
        if (stimulus instanceof Stimulus.Opened opened) {
            turn.open(new Plan(opened.rehearsal(), opened.site()), opened.firstOrderId());
            turn.note(
                    Weight.PLAIN,
                    (opened.rehearsal() ? "REHEARSAL desk opened at " : "Desk opened at ") + opened.site() + ".");
        } else if (stimulus instanceof Stimulus.LineChanged changed) {
            turn.line = new Line(changed.up(), changed.sentence());
            turn.note(changed.up() ? Weight.PLAIN : Weight.ATTENTION, changed.sentence());
        } else if (stimulus instanceof Stimulus.SessionOpened opened) {
            turn.session = new Session(true, opened.payload(), opened.session(), "");
            turn.note(Weight.PLAIN, "Session open with payload " + opened.payload() + ".");
        } else if (stimulus instanceof Stimulus.SessionLost lost) {
            turn.session = new Session(false, 0, 0, lost.sentence());
            Orders.sessionLost(turn);
            turn.note(Weight.ATTENTION, lost.sentence());
        } else if (stimulus instanceof Stimulus.StrangerHeard stranger) {
            turn.note(Weight.PINNED, stranger.sentence());
        } else if (stimulus instanceof Stimulus.JournalChanged changed) {
            turn.journal = new JournalHealth(changed.writing(), changed.sentence());
            turn.note(changed.writing() ? Weight.PLAIN : Weight.PINNED, changed.sentence());
        } else if (stimulus instanceof Stimulus.NotSent notSent) {
            Orders.notSent(turn, notSent.orderId(), notSent.sentence());
        } else if (stimulus instanceof Stimulus.TruthTold truth) {
            Sampling.truth(turn, truth.sampler(), truth.amount());
        }
    }

    private static void heard(Turn turn, Stimulus.Heard heard) {
        boolean wasFresh = turn.isLinkFresh();
        Downlink message = heard.message();
        if (message instanceof Status status) {
            long silence = turn.before.statusAgeMillis();
            boolean isNews = Telemetry.status(turn, heard.frame().header(), status);
            if (isNews) {
                Events.status(turn, status);
            }
            if (!wasFresh && turn.isLinkFresh() && silence != Long.MAX_VALUE) {
                turn.note(Weight.PLAIN, "Status is fresh again after " + Words.age(silence) + ".");
            }
        } else if (message instanceof CurrentTrace trace) {
            Telemetry.trace(turn, trace);
        } else if (message instanceof Event event) {
            Events.heard(turn, event);
        } else if (message instanceof Outcome outcome) {
            Orders.heard(turn, outcome);
        } else if (message instanceof ValveWaveform piece) {
            Telemetry.waveform(turn, piece);
        } else if (message instanceof Identity identity) {
            Telemetry.identity(turn, heard.frame().header(), identity);
        }
    }

    private static void ticked(Turn turn) {
        boolean wasFresh = turn.before.isLinkFresh();
        if (wasFresh && !turn.isLinkFresh()) {
            turn.note(
                    Weight.ATTENTION,
                    "No status for " + Words.age(turn.state().statusAgeMillis())
                            + ": nothing shown is known to be so any more.");
            turn.sound(Effect.Cue.ATTENTION);
        }
        if (turn.attestations.stream().anyMatch(known -> known.secondsLeft(turn.now) <= 0)) {
            turn.attestations = turn.attestations.stream()
                    .filter(known -> known.secondsLeft(turn.now) > 0)
                    .toList();
        }
        Orders.tick(turn);
        Events.tick(turn);
        Sampling.tick(turn);
    }

    /** What a lane is doing, as far as the console can know: without a fresh status, or with an open doubt, unknown. */
    private static Phase phaseOf(Turn turn, Lane lane) {
        if (lane.isUnresolved() || !turn.isLinkFresh()) {
            return Phase.UNKNOWN;
        }
        return Phase.of(turn.status.orElseThrow().status().state(lane.sampler()));
    }
}
