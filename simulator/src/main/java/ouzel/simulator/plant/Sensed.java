package ouzel.simulator.plant;

import java.util.List;

/**
 * What the controller's converters and inputs read at one instant, in the wire units of
 * {@link ouzel.protocol.message.Readings}; quantised and noisy as the hardware would give it.
 *
 * @param batteryMillivolts pack voltage, mV
 * @param batteryMilliamps pack current, mA
 * @param tiltTenths tilt from the vertical, tenths of a degree
 * @param motionMilligees acceleration about its mean, mg
 * @param vibrationMilligees vibration in the rotor band, mg
 * @param temperatureTenths ambient temperature, tenths of a degree Celsius
 * @param pressureTensPascals ambient pressure, 10 Pa
 * @param bagPascals bag pressure over ambient, Pa
 * @param gasKilopascals regulated gas pressure over ambient, kPa
 * @param switches bits of {@link ouzel.protocol.message.Readings.Switch}, without SELF_TEST, which is the controller's
 * @param waterPumpMilliamps current of the water pump, mA
 * @param airPumpMilliamps current of the air pump, mA
 * @param valveMilliamps coil current of the soil valve in this step, 2 000 samples a second, oldest first; empty while
 *     the coil is off
 */
public record Sensed(
        int batteryMillivolts,
        int batteryMilliamps,
        int tiltTenths,
        int motionMilligees,
        int vibrationMilligees,
        int temperatureTenths,
        int pressureTensPascals,
        int bagPascals,
        int gasKilopascals,
        int switches,
        int waterPumpMilliamps,
        int airPumpMilliamps,
        List<Integer> valveMilliamps) {}
