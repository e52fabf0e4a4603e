package ouzel.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A desk begins with its first stimulus, not with the instant at which its object was made. */
final class DeskStartTest {
    @Test
    void theStateFollowsFromTheStimuliAloneWheneverTheDeskWasMade() {
        Moment made = new Moment(0, 0);
        Moment opened = new Moment(7_000_000, 7);
        Stimulus first = new Stimulus.Opened(500, true, "flooded quarry");

        DeskState live = Desk.fold(Desk.start(made), opened, first).state();
        DeskState again = Desk.fold(Desk.start(opened), opened, first).state();

        assertThat(live).isEqualTo(again);
    }
}
