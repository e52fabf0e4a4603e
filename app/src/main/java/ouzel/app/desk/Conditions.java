package ouzel.app.desk;

import java.util.List;
import ouzel.protocol.message.Sampler;

/** The console's own opinion of every condition, with its own limits: the second of two independent judges. */
public final class Conditions {
    private Conditions() {}

    /** Every condition {@code sampler} needs as it stands in {@code state}, in the order of {@link Condition}. */
    public static List<ConditionRow> rows(DeskState state, Sampler sampler) {
        return List.of();
    }

    /** True if every condition holds and {@code sampler} may be armed as far as the console believes. */
    public static boolean mayArm(DeskState state, Sampler sampler) {
        return rows(state, sampler).stream().allMatch(ConditionRow::isMet);
    }
}
