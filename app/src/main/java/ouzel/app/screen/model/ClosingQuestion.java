package ouzel.app.screen.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Lane;
import ouzel.app.desk.Phase;

/** What is asked before the window closes over something live. */
public final class ClosingQuestion {
    private ClosingQuestion() {}

    /** What is live and what will become of it, one sentence a line; empty if the window may simply close. */
    public static Optional<String> of(DeskState state) {
        if (!state.isAnythingLive()) {
            return Optional.empty();
        }
        List<String> sentences = new ArrayList<>();
        state.lanes().forEach(lane -> sentence(lane).ifPresent(sentences::add));
        return Optional.of(String.join("\n", sentences));
    }

    private static Optional<String> sentence(Lane lane) {
        String name = lane.sampler().name();
        if (lane.phase() == Phase.ARMED) {
            return Optional.of(name + " is armed: it goes safe by itself 1.5 s after the keep-alive stops.");
        }
        if (lane.phase() == Phase.DRAWING) {
            return Optional.of(name
                    + " is drawing: unwatched, it finishes within its limits or stops, as its policy on board says.");
        }
        if (lane.phase() == Phase.STROKING) {
            return Optional.of(name + " is stroking: the stroke completes by itself. Nobody near the probe.");
        }
        return lane.isUnresolved()
                ? Optional.of(name + ": nobody knows yet what became of an order. It may be armed or moving.")
                : Optional.empty();
    }
}
