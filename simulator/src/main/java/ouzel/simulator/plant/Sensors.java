package ouzel.simulator.plant;

import java.util.List;
import java.util.Set;
import ouzel.protocol.message.Readings.Switch;

/** Every sensor on board, each with an offset of its own. */
final class Sensors {
    private final Set<Fault> faults;
    private final SensorConverter batteryVolts;
    private final SensorConverter batteryCurrent;
    private final SensorConverter tilt;
    private final SensorConverter motion;
    private final SensorConverter vibration;
    private final SensorConverter temperature;
    private final SensorConverter pressure;
    private final SensorConverter bag;
    private final SensorConverter gas;
    private final SensorConverter waterCurrent;
    private final SensorConverter airCurrent;
    private int lastTilt;

    Sensors(Noise noise, Set<Fault> faults) {
        this.faults = faults;
        batteryVolts = SensorConverter.analogue(0, 15_000, noise.uniform(-25, 25), 6, noise.split("volts"));
        batteryCurrent = SensorConverter.analogue(0, 8_000, noise.uniform(-10, 10), 6, noise.split("amperes"));
        tilt = SensorConverter.digital(0, 1_800, noise.uniform(-4, 4), 1.5, noise.split("tilt"));
        motion = SensorConverter.digital(0, 2_000, noise.uniform(-1, 1), 1.5, noise.split("motion"));
        vibration = SensorConverter.digital(0, 4_000, noise.uniform(-1, 1), 2, noise.split("vibration"));
        temperature = SensorConverter.digital(-500, 1_000, noise.uniform(-4, 4), 0.7, noise.split("celsius"));
        pressure = SensorConverter.digital(3_000, 11_000, noise.uniform(-8, 8), 1.2, noise.split("ambient"));
        bag = SensorConverter.analogue(-1_000, 9_230, noise.uniform(-15, 15), 6, noise.split("bag"));
        gas = SensorConverter.analogue(0, 1_000, noise.uniform(-4, 4), 0.8, noise.split("gas"));
        waterCurrent = SensorConverter.analogue(0, 5_000, noise.uniform(0, 4), 4, noise.split("water"));
        airCurrent = SensorConverter.analogue(0, 2_000, noise.uniform(0, 3), 2.5, noise.split("air"));
    }

    /** Reads the parts as they stand at the end of a step. */
    Sensed read(Parts parts, double tiltDegrees, Surroundings surroundings, List<Integer> coil) {
        if (!faults.contains(Fault.TILT_FROZEN)) {
            lastTilt = tilt.read(tiltDegrees * 10);
        }
        return new Sensed(
                batteryVolts.read(parts.pack().volts() * 1_000),
                batteryCurrent.read(parts.pack().amperes() * 1_000),
                lastTilt,
                motion.read(parts.motion().milligees()),
                vibration.read(parts.motion().vibrationMilligees()),
                temperature.read(surroundings.temperatureCelsius() * 10),
                pressure.read(surroundings.pressurePascals() / 10),
                bag.read(parts.airLine().sensedPascals()),
                gas.read(parts.supply().linePascals() / 1_000),
                switches(parts),
                waterCurrent.read(parts.waterLine().amperes() * 1_000),
                airCurrent.read(parts.airLine().amperes() * 1_000),
                coil);
    }

    private static int switches(Parts parts) {
        return parts.contacts().bits()
                | (parts.jar().isSwitchClosed() ? Switch.JAR_FULL.bit() : 0)
                | (parts.probe().isHome() ? Switch.PROBE_HOME.bit() : 0);
    }

    /** What there is to read. */
    record Parts(
            Jar jar,
            WaterLine waterLine,
            AirLine airLine,
            GasSupply supply,
            Probe probe,
            BatteryPack pack,
            BodyMotion motion,
            WetSensors contacts) {}
}
