package ouzel.simulator.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import ouzel.simulator.plant.PayloadProfile;

final class ProfileFileTest {
    @Test
    void theReferencePayloadIsWhole() {
        PayloadProfile reference = ProfileFile.reference();

        assertThat(reference.water().jarMillilitres()).isEqualTo(420);
        assertThat(reference.air().doseMillilitres()).isEqualTo(600);
        assertThat(reference.pack().cells()).isEqualTo(3);
    }

    @Test
    void anEmptyFileIsRefusedWithTheFirstMissingKey() {
        ByteArrayInputStream empty = new ByteArrayInputStream("# nothing\n".getBytes(StandardCharsets.UTF_8));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> ProfileFile.read(empty))
                .withMessageContaining("water-pump.dry-amperes : missing");
    }
}
