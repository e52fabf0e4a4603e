package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import ouzel.protocol.session.ReplayWindow.Standing;

/** Semantics of RFC 4303, section 3.4.3 (from memory), 64 wide; the sequence is our own derivation. */
class ReplayWindowTest {
    private final ReplayWindow window = new ReplayWindow();

    @Test
    void followsTheWorkedSequence() {
        assertThat(offer(1)).isEqualTo(Standing.FRESH);
        assertThat(offer(1)).isEqualTo(Standing.REPEATED);
        assertThat(offer(100)).isEqualTo(Standing.FRESH);
        assertThat(offer(37)).isEqualTo(Standing.FRESH);
        assertThat(offer(36)).isEqualTo(Standing.TOO_OLD);
        assertThat(offer(37)).isEqualTo(Standing.REPEATED);
        assertThat(window.standing(101)).as("asked, but its tag was wrong").isEqualTo(Standing.FRESH);
        assertThat(offer(164)).isEqualTo(Standing.FRESH);
        assertThat(offer(100)).isEqualTo(Standing.TOO_OLD);
        assertThat(offer(101)).isEqualTo(Standing.FRESH);
    }

    @Test
    void doesNotMoveForACounterWhoseTagWasNotProven() {
        offer(1);

        window.standing(0xFFFF_FFFFL);

        assertThat(window.standing(2)).isEqualTo(Standing.FRESH);
    }

    @Test
    void neverTakesZero() {
        assertThat(window.standing(0)).isEqualTo(Standing.REPEATED);
    }

    @Test
    void takesTheGreatestCounterOnce() {
        assertThat(offer(0xFFFF_FFFFL)).isEqualTo(Standing.FRESH);
        assertThat(offer(0xFFFF_FFFFL)).isEqualTo(Standing.REPEATED);
        assertThat(offer(0xFFFF_FFFFL - 63)).isEqualTo(Standing.FRESH);
        assertThat(offer(0xFFFF_FFFFL - 64)).isEqualTo(Standing.TOO_OLD);
        assertThat(offer(1)).isEqualTo(Standing.TOO_OLD);
    }

    @Property
    void agreesWithASetThatForgetsNothing(@ForAll List<@LongRange(min = 1, max = 300) Long> counters) {
        ReplayWindow fresh = new ReplayWindow();
        Set<Long> accepted = new HashSet<>();
        long newest = 0;
        for (long counter : counters) {
            Standing standing = fresh.standing(counter);

            assertThat(standing == Standing.TOO_OLD).isEqualTo(newest - counter >= 64);
            assertThat(standing == Standing.FRESH).isEqualTo(newest - counter < 64 && accepted.add(counter));
            if (standing == Standing.FRESH) {
                fresh.accept(counter);
                newest = Math.max(newest, counter);
            }
        }
    }

    private Standing offer(long counter) {
        Standing standing = window.standing(counter);
        if (standing == Standing.FRESH) {
            window.accept(counter);
        }
        return standing;
    }
}
