package ouzel.app.desk;

import java.util.List;

/** The one function that changes what the desk knows. */
public final class Desk {
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
}
