package ouzel.app.command;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the word that was probably meant. */
final class Closest {
    /** More slips than this are another word, not a slip. */
    private static final int MOST_SLIPS = 2;

    private Closest() {}

    /** The one of {@code known} with the fewest slips to {@code typed}, if those are few. */
    static Optional<String> of(String typed, Collection<String> known) {
        return known.stream()
                .filter(word -> slips(typed, word) <= MOST_SLIPS)
                .min(Comparator.comparingInt((String word) -> slips(typed, word))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** Letters to add, drop, replace or swap with their neighbour (optimal string alignment distance). */
    static int slips(String from, String to) {
        int[][] cost = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(cost, i, j, from, to);
            }
        }
        return cost[from.length()][to.length()];
    }

    private static int cheapest(int[][] cost, int i, int j, String from, String to) {
        int differs = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
        int best = Math.min(Math.min(cost[i - 1][j], cost[i][j - 1]) + 1, cost[i - 1][j - 1] + differs);
        boolean swapped =
                i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
        return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
    }
}
