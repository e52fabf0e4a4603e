package ouzel.app.screen.model;

import java.util.List;

/**
 * How far one order came, stage by stage.
 *
 * @param name what was asked
 * @param stages the stages it goes through, first to last
 * @param words why it was refused, failed or is unknown; empty if all is well
 * @param attention how much it asks for the eyes
 */
public record OrderLine(String name, List<Stage> stages, String words, Attention attention) {
    public OrderLine {
        stages = List.copyOf(stages);
    }

    /** Where one stage stands. */
    public enum Reach {
        /** Passed, or reached last. */
        REACHED,
        /** Still to come. */
        AHEAD,
        /** Ended badly, or nobody knows. */
        BAD
    }

    /**
     * One stage.
     *
     * @param word its word
     * @param time when it was reached: clock time for the first, seconds after it for the rest; empty if it was not
     * @param reach where it stands
     */
    public record Stage(String word, String time, Reach reach) {}
}
