package ouzel.app.screen.model;

import java.util.List;

/**
 * The journal list.
 *
 * @param pinned what waits for the operator, newest first
 * @param lines everything else, newest first
 */
public record JournalView(List<Line> pinned, List<Line> lines) {
    public JournalView {
        pinned = List.copyOf(pinned);
        lines = List.copyOf(lines);
    }

    /**
     * One note.
     *
     * @param note its number, for the acknowledgement
     * @param time clock time
     * @param lane the sampler's name, empty if none is concerned
     * @param sentence what happened
     * @param attention how much it asks for the eyes
     */
    public record Line(long note, String time, String lane, String sentence, Attention attention) {
        /** The whole line as it is read out. */
        public String spoken() {
            return time + "  " + (lane.isEmpty() ? "" : lane + "  ") + sentence;
        }
    }
}
