package ouzel.simulator.controller;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Many storms; a failing one is named by its seed. */
class StormTest {

    @Property(tries = 40)
    void holdsTheInvariantsInEveryStorm(@ForAll long seed) {
        new Storm(seed).rage(150);
    }

    @Test
    void aStormDoesSetThingsGoing() {
        int switchings = 0;
        for (long seed = 1; seed <= 10; seed++) {
            switchings += new Storm(seed).rage(150).switchings();
        }

        assertThat(switchings).isGreaterThan(20);
    }
}
