package ouzel.simulator.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

final class PayloadProfileTest {
    private static final PayloadProfile NOMINAL = Rig.PROFILE;

    @Test
    void unitsDifferFromTheProfileAsFarAsSuchPartsDo() {
        Set<Double> flows = new HashSet<>();
        for (long seed = 0; seed < 100; seed++) {
            PayloadProfile unit = NOMINAL.asBuilt(new Noise(seed));
            flows.add(unit.waterPump().freeMillilitresPerSecond());
            assertThat(unit.waterPump().freeMillilitresPerSecond())
                    .isCloseTo(NOMINAL.waterPump().freeMillilitresPerSecond(), withinPercentage(5));
            assertThat(unit.pack().milliampHours()).isLessThanOrEqualTo(1_800);
        }

        assertThat(flows).hasSize(100);
    }

    @Test
    void aMissingKeyIsNamed() {
        Map<String, String> figures = reference();
        figures.remove("probe.bore-millimetres");

        assertThatIllegalArgumentException()
                .isThrownBy(() -> PayloadProfile.from(figures))
                .withMessageContaining("probe.bore-millimetres : missing (expected: 4.0 to 60.0)");
    }

    @Test
    void anUnknownKeyIsNamed() {
        Map<String, String> figures = reference();
        figures.put("probe.bore-milimetres", "18");

        assertThatIllegalArgumentException()
                .isThrownBy(() -> PayloadProfile.from(figures))
                .withMessageContaining("[probe.bore-milimetres]");
    }

    @Test
    void aValueOutOfRangeAndAWordAreRefused() {
        Map<String, String> figures = reference();
        figures.put("pack.cells", "0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PayloadProfile.from(figures))
                .withMessageContaining("pack.cells : 0.0 (expected: 1.0 to 12.0)");

        figures.put("pack.cells", "three");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PayloadProfile.from(figures))
                .withMessageContaining("pack.cells : three");
    }

    private static Map<String, String> reference() {
        Map<String, String> figures = new TreeMap<>(ReferenceFigures.read());
        assertThat(PayloadProfile.from(figures)).isEqualTo(NOMINAL);
        return figures;
    }
}
