package ouzel.app.screen.model;

import java.util.Optional;
import ouzel.protocol.message.Sampler;

/**
 * One sampler's lane.
 *
 * @param sampler which
 * @param badge what it is doing
 * @param dose what arming asks for
 * @param controls what the operator may do now
 * @param ladder what stands in the way
 * @param order the order that matters most, if there is one
 * @param fill the amount so far, or what the valve did
 * @param facts live values beside it
 * @param plot what the plot draws
 * @param sample the last thing this sampler brought aboard
 * @param caution the words to keep in mind at this act
 */
public record LaneView(
        Sampler sampler,
        Badge badge,
        Dose dose,
        Controls controls,
        LadderView ladder,
        Optional<OrderLine> order,
        Cell fill,
        Cell facts,
        PlotView plot,
        Optional<Alert> sample,
        Caution caution) {

    LaneView shownOnly() {
        Dose fixed = new Dose(dose.amount(), dose.unit(), false);
        Controls none = new Controls(false, false, false, false, "", "Playback", controls.hint());
        return new LaneView(sampler, badge, fixed, none, ladder.shownOnly(), order, fill, facts, plot, sample, caution);
    }

    /**
     * The sampler's state as shape, word and shade.
     *
     * @param shape the shape painted beside the word
     * @param word the state in a word
     * @param detail what goes with it, such as the seconds left; may be empty
     * @param attention its shade
     */
    public record Badge(Shape shape, String word, String detail, Attention attention) {}

    /** Shapes that tell the states apart without colour. */
    public enum Shape {
        /** A hollow square: at rest. */
        REST,
        /** A filled triangle: armed. */
        ARMED,
        /** A filled arrow: moving. */
        MOVING,
        /** A tick. */
        DONE,
        /** A hollow circle with a bar: used up. */
        SPENT,
        /** A cross. */
        FAULT,
        /** A question mark. */
        UNKNOWN
    }

    /**
     * The asked amount.
     *
     * @param amount in {@code unit}
     * @param unit its unit
     * @param editable whether it may be changed now
     */
    public record Dose(int amount, String unit, boolean editable) {}

    /**
     * What the operator may do now.
     *
     * @param arm whether arming may be asked for
     * @param hold whether holding the control triggers
     * @param stop whether there is anything to stop
     * @param reload whether a fresh container can be recorded
     * @param reloadQuestion what is asked before it is recorded
     * @param rest what the hold control says while it cannot be held
     * @param hint one line: what to do next, or what stands in the way
     */
    public record Controls(
            boolean arm, boolean hold, boolean stop, boolean reload, String reloadQuestion, String rest, Alert hint) {}

    /**
     * A caution in the sense of ANSI Z535 signal words (from memory).
     *
     * @param signalWord WARNING, CAUTION or NOTICE
     * @param text what to keep in mind
     */
    public record Caution(String signalWord, String text) {}
}
