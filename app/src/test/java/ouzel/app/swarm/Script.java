package ouzel.app.swarm;

import java.util.List;

/**
 * All that happens in one sortie.
 *
 * @param seed what the chance in radios, plant and nonces comes from
 * @param build the payload it happens to
 * @param chaosMillis when the happenings end and the link becomes good, ms
 * @param lines what happens, earliest first
 */
record Script(long seed, Build build, int chaosMillis, List<Line> lines) {
    /**
     * The payload.
     *
     * @param capabilities what is fitted and measured
     * @param clockMillis what the payload's clock shows when it is switched on, ms
     */
    record Build(int capabilities, long clockMillis) {}

    /**
     * One happening at its time.
     *
     * @param number its place in the whole script of its seed
     */
    record Line(int number, int atMillis, Happening happening) {}

    Script {
        lines = List.copyOf(lines);
    }

    Script with(List<Line> fewer) {
        return new Script(seed, build, chaosMillis, fewer);
    }

    /** This script with nothing but the lines of {@code numbers}. */
    Script keeping(List<Integer> numbers) {
        return with(
                lines.stream().filter(line -> numbers.contains(line.number())).toList());
    }
}
