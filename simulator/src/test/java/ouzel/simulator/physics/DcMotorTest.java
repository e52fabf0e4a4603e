package ouzel.simulator.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class DcMotorTest {
    private final DcMotor motor = new DcMotor(1, 0.02);

    /** Equations of the permanent-magnet motor, 12 V, 1 ohm, k = 0.02, recomputed; N m, A, rpm. */
    @ParameterizedTest
    @CsvSource({"0, 0, 5729.58", "0.02, 1, 5252.11", "0.05, 2.5, 4535.92", "0.10, 5, 3342.25", "0.24, 12, 0"})
    void currentRisesAndSpeedFallsWithLoad(double torque, double amperes, double rpm) {
        assertThat(motor.amperes(torque)).isCloseTo(amperes, within(1e-9));
        assertThat(motor.revolutionsPerMinute(12, torque)).isCloseTo(rpm, within(0.005));
    }

    @Test
    void anOverloadedMotorStandsStillAtVoltsOverOhms() {
        assertThat(motor.radiansPerSecond(12, 0.5)).isZero();
        assertThat(motor.stallAmperes(12)).isEqualTo(12);
    }

    @Test
    void refusesAMotorWithoutResistance() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DcMotor(0, 0.02))
                .withMessageContaining("ohms : 0.0");
    }
}
