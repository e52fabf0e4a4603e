package ouzel.protocol.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ouzel.protocol.message.Bytes;

class NonceSourceTest {
    @Test
    void neverRepeatsEvenWithARandomSourceThatIsStuck() {
        Set<Bytes> seen = new HashSet<>();

        for (int boot = 1; boot <= 20; boot++) {
            NonceSource source = new NonceSource(boot, () -> 4);
            for (int i = 0; i < 100; i++) {
                seen.add(source.get());
            }
        }

        assertThat(seen)
                .hasSize(2_000)
                .allSatisfy(nonce -> assertThat(nonce.length()).isEqualTo(16));
    }

    @Test
    void holdsEightBytesThatNobodyCanForetell() {
        assertThat(new NonceSource(0x01020304L, () -> 0x1112131415161718L).get())
                .hasToString("04030201" + "01000000" + "1817161514131211");
    }
}
