package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class OrderCounterTest {
    @Test
    void beginsAtOne() {
        assertThat(new OrderCounter(0).next()).isEqualTo(1);
    }

    @Test
    void giveEachValueOnceAndThenAsksForANewSession() {
        OrderCounter counter = new OrderCounter(0xFFFF_FFFFL - 2);

        assertThat(counter.next()).isEqualTo(0xFFFF_FFFEL);
        assertThat(counter.isSpent()).isFalse();
        assertThat(counter.next()).isEqualTo(0xFFFF_FFFFL);
        assertThat(counter.isSpent()).isTrue();
        assertThatThrownBy(counter::next).isInstanceOf(IllegalStateException.class);
    }
}
