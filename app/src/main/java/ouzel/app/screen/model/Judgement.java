package ouzel.app.screen.model;

import java.util.List;
import ouzel.app.desk.ConditionRow;
import ouzel.app.desk.Conditions;
import ouzel.app.desk.DeskState;
import ouzel.protocol.message.Sampler;

/** Where the presenter learns how the conditions stand; {@link Conditions#rows} in the program. */
@FunctionalInterface
public interface Judgement {
    /** Every condition {@code sampler} needs, as it stands in {@code state}. */
    List<ConditionRow> rows(DeskState state, Sampler sampler);
}
