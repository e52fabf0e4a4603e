package ouzel.app.screen.model;

import java.util.List;
import ouzel.app.desk.Condition;

/**
 * The conditions of one sampler, what stands in the way first.
 *
 * @param heading how many hold of how many
 * @param attention calm when all hold
 * @param rows unmet, unknown and disputed ones, then what people confirmed and how long it still counts
 * @param folded what could not be told one by one for the same cause; may be empty
 * @param met all that simply hold, in one line; may be empty
 */
public record LadderView(String heading, Attention attention, List<Row> rows, String folded, String met) {
    public LadderView {
        rows = List.copyOf(rows);
    }

    LadderView shownOnly() {
        List<Row> plain = rows.stream()
                .map(row -> new Row(row.condition(), row.sign(), row.words(), row.detail(), ""))
                .toList();
        return new LadderView(heading, attention, plain, folded, met);
    }

    /** How a row stands, as a sign beside it. */
    public enum Sign {
        /** Holds, on somebody's word. */
        MET,
        /** Does not hold. */
        UNMET,
        /** Not known. */
        UNKNOWN,
        /** Console and payload disagree. */
        DISPUTED
    }

    /**
     * One condition.
     *
     * @param condition which
     * @param sign how it stands
     * @param words the condition and its value against its limit
     * @param detail what to do, and how it is known
     * @param confirm label of the button with which a person confirms it; empty if a person cannot, or need not
     */
    public record Row(Condition condition, Sign sign, String words, String detail, String confirm) {}
}
