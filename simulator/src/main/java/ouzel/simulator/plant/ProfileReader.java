package ouzel.simulator.plant;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Reads the figures of a profile by key, each within its range, and knows which keys nobody asked for. */
final class ProfileReader {
    private final Map<String, String> figures;
    private final Set<String> unread;

    ProfileReader(Map<String, String> figures) {
        this.figures = figures;
        this.unread = new TreeSet<>(figures.keySet());
    }

    PayloadProfile profile() {
        PayloadProfile profile = new PayloadProfile(
                pump("water-pump"), pump("air-pump"), water(), air(), valve(), probe(), gas(), pack());
        if (!unread.isEmpty()) {
            throw new IllegalArgumentException("profile : " + unread + " (expected: known keys only)");
        }
        return profile;
    }

    private PayloadProfile.Pump pump(String name) {
        double dryAmperes = number(name + ".dry-amperes", 0.01, 10);
        return new PayloadProfile.Pump(
                number(name + ".nominal-volts", 3, 30),
                number(name + ".free-millilitres-per-second", 0.1, 200),
                number(name + ".stall-pascals", 1_000, 500_000),
                number(name + ".ohms", 0.1, 100),
                dryAmperes,
                number(name + ".loaded-amperes", dryAmperes, 10),
                number(name + ".loaded-rpm", 100, 20_000),
                number(name + ".spin-up-seconds", 0.02, 1),
                number(name + ".dry-ripple", 0, 0.5),
                number(name + ".loaded-ripple", 0, 0.5));
    }

    private PayloadProfile.WaterSampler water() {
        double jar = number("water.jar-millilitres", 20, 5_000);
        return new PayloadProfile.WaterSampler(
                number("water.suction-millilitres", 10, 500),
                number("water.delivery-millilitres", 10, 500),
                number("water.lift-pascals", 0, 50_000),
                jar,
                number("water.level-switch-millilitres", 10, jar),
                number("water.dose-millilitres", 1, jar));
    }

    private PayloadProfile.AirSampler air() {
        double bag = number("air.bag-millilitres", 50, 20_000);
        return new PayloadProfile.AirSampler(
                bag,
                number("air.slack-pascals", 0, 500),
                number("air.stiffness-pascals-per-millilitre", 0.1, 500),
                number("air.burst-pascals", 500, 50_000),
                number("air.dose-millilitres", 1, bag));
    }

    private PayloadProfile.Valve valve() {
        double rest = number("valve.rest-henries", 0.001, 5);
        return new PayloadProfile.Valve(
                number("valve.ohms", 1, 1_000),
                rest,
                number("valve.seated-henries", rest, 10),
                number("valve.pull-in-amperes", 0.01, 5),
                number("valve.travel-millis", 1, 50));
    }

    private PayloadProfile.Probe probe() {
        return new PayloadProfile.Probe(
                number("probe.bore-millimetres", 4, 60),
                number("probe.stroke-millimetres", 10, 400),
                number("probe.dead-millilitres", 1, 50),
                number("probe.spring-preload-newtons", 1, 300),
                number("probe.spring-newtons-per-millimetre", 0, 10),
                number("probe.tip-millimetres", 2, 60),
                number("probe.core-grams-per-millimetre", 0, 5),
                number("probe.damping-newton-seconds-per-metre", 15, 1_000));
    }

    private PayloadProfile.Gas gas() {
        return new PayloadProfile.Gas(
                number("gas.cartridge-grams", 4, 200),
                number("gas.cartridge-millilitres", 5, 300),
                number("gas.steel-grams", 10, 1_000),
                number("gas.regulated-kilopascals", 50, 1_200),
                number("gas.line-millilitres", 5, 200));
    }

    private PayloadProfile.Pack pack() {
        return new PayloadProfile.Pack(
                (int) number("pack.cells", 1, 12),
                number("pack.milliamp-hours", 100, 50_000),
                number("pack.ohms", 0.001, 1),
                number("pack.start-charge", 0.01, 1),
                number("pack.idle-amperes", 0, 5));
    }

    private double number(String key, double least, double greatest) {
        String text = figures.get(key);
        String expected = " (expected: " + least + " to " + greatest + ")";
        if (text == null) {
            throw new IllegalArgumentException(key + " : missing" + expected);
        }
        unread.remove(key);
        double value = parsed(key, text.strip(), expected);
        if (!(value >= least && value <= greatest)) {
            throw new IllegalArgumentException(key + " : " + value + expected);
        }
        return value;
    }

    private static double parsed(String key, String text, String expected) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException notANumber) {
            throw new IllegalArgumentException(key + " : " + text + expected, notANumber);
        }
    }
}
