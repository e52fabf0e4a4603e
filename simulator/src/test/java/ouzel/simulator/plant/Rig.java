package ouzel.simulator.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import ouzel.simulator.profile.ProfileFile;

/** A plant on the bench: runs it for a time and keeps what it sensed. */
final class Rig {
    static final PayloadProfile PROFILE = ProfileFile.reference();
    static final Surroundings AFLOAT = at(Surroundings.Place.AFLOAT, 0);
    static final Surroundings ON_GROUND = at(Surroundings.Place.ON_GROUND, 0.8);
    static final Surroundings ALOFT = at(Surroundings.Place.ALOFT, 0);
    static final Outputs WATER = new Outputs(true, false, false);
    static final Outputs AIR = new Outputs(false, true, false);
    static final Outputs VALVE = new Outputs(false, false, true);

    final Plant plant;

    Rig(long seed, Fault... faults) {
        plant = new Plant(PROFILE, seed);
        for (Fault fault : faults) {
            plant.fault(fault);
        }
    }

    /** A place with little else to it: level, a light sway, 18 °C, sea-level pressure. */
    static Surroundings at(Surroundings.Place place, double coneIndexMegapascals) {
        return new Surroundings(place, false, 2, 20, 18, 101_325, coneIndexMegapascals);
    }

    List<Sensed> run(Outputs outputs, Surroundings surroundings, int millis) {
        List<Sensed> sensed = new ArrayList<>();
        for (int elapsed = 0; elapsed < millis; elapsed += Plant.STEP_MILLIS) {
            sensed.add(plant.step(outputs, surroundings));
        }
        return sensed;
    }

    /** Pumps until water reaches the jar and the current has settled. */
    Rig primed() {
        run(Outputs.OFF, AFLOAT, 1_000);
        run(WATER, AFLOAT, 7_000);
        return this;
    }

    /** One stroke: valve on for 450 ms, then rest. */
    List<Sensed> stroke(Surroundings surroundings) {
        List<Sensed> sensed = new ArrayList<>(run(VALVE, surroundings, 450));
        sensed.addAll(run(Outputs.OFF, surroundings, 2_550));
        return sensed;
    }

    static double mean(List<Sensed> sensed, ToIntFunction<Sensed> reading) {
        return sensed.stream().mapToInt(reading).average().orElseThrow();
    }

    /** Standard deviation over the mean. */
    static double ripple(List<Sensed> sensed, ToIntFunction<Sensed> reading) {
        double mean = mean(sensed, reading);
        double squares = sensed.stream()
                .mapToInt(reading)
                .mapToDouble(value -> (value - mean) * (value - mean))
                .sum();
        return Math.sqrt(squares / sensed.size()) / mean;
    }

    /** The coil current of all steps, mA. */
    static List<Integer> waveform(List<Sensed> sensed) {
        return sensed.stream().flatMap(step -> step.valveMilliamps().stream()).toList();
    }

    /** Index at which the current lies furthest below an earlier value. */
    static int dipIndex(List<Integer> milliamps) {
        int deepest = 0;
        for (int index = 0; index < milliamps.size(); index++) {
            deepest = fallAt(milliamps, index) > fallAt(milliamps, deepest) ? index : deepest;
        }
        return deepest;
    }

    /** How far the current falls below an earlier value at its dip, mA. */
    static int dipDepth(List<Integer> milliamps) {
        return fallAt(milliamps, dipIndex(milliamps));
    }

    private static int fallAt(List<Integer> milliamps, int index) {
        int highest = milliamps.subList(0, index + 1).stream()
                .mapToInt(Integer::intValue)
                .max()
                .orElseThrow();
        return highest - milliamps.get(index);
    }
}
