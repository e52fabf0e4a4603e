package ouzel.app.swarm;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import ouzel.app.swarm.Script.Line;

/** Drops what a failure does not need: ever smaller pieces of a script, as long as the rest still fails. */
final class Shortening {
    private Shortening() {}

    /** A script that still fails, from which no single line can be dropped. */
    static Script of(Script failing, Predicate<Script> fails) {
        Script shortest = failing;
        int piece = Math.max(1, failing.lines().size() / 2);
        while (piece >= 1) {
            boolean dropped = false;
            for (int from = 0; from < shortest.lines().size(); ) {
                List<Line> fewer = new ArrayList<>(shortest.lines());
                fewer.subList(from, Math.min(fewer.size(), from + piece)).clear();
                Script candidate = shortest.with(fewer);
                if (fails.test(candidate)) {
                    shortest = candidate;
                    dropped = true;
                } else {
                    from += piece;
                }
            }
            piece = dropped && piece == 1 ? 1 : piece / 2;
        }
        return shortest;
    }
}
