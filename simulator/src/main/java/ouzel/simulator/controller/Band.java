package ouzel.simulator.controller;

/**
 * When a permissive counts as met: a narrow band to arm, a wider one before it trips, and how long each must last.
 *
 * <p>A condition of two positions is a band too: 1 for yes, 0 for no. {@link #OPEN_BELOW} and {@link #OPEN_ABOVE} leave
 * a side without a limit.
 *
 * @param armLeast least value that arms, in the permissive's unit
 * @param armGreatest greatest value that arms
 * @param tripLeast a value below this trips an armed or acting sampler
 * @param tripGreatest a value above this trips an armed or acting sampler
 * @param metAfterMillis how long the value must stay in the arm band before the permissive counts as met, ms
 * @param tripsAfterMillis how long the value must stay outside the trip band before it trips, ms; 0: at once
 */
public record Band(
        int armLeast, int armGreatest, int tripLeast, int tripGreatest, int metAfterMillis, int tripsAfterMillis) {

    /** No lower limit. */
    public static final int OPEN_BELOW = Integer.MIN_VALUE;
    /** No upper limit. */
    public static final int OPEN_ABOVE = Integer.MAX_VALUE;

    /** Checks that the arm band lies inside the trip band. */
    public Band {
        if (tripLeast > armLeast || armLeast > armGreatest || armGreatest > tripGreatest) {
            throw new IllegalArgumentException("band : " + tripLeast + " " + armLeast + " " + armGreatest + " "
                    + tripGreatest + " (expected: in rising order)");
        }
        if (metAfterMillis < 0 || tripsAfterMillis < 0) {
            throw new IllegalArgumentException(
                    "delays : " + metAfterMillis + " " + tripsAfterMillis + " (expected: not negative)");
        }
    }

    /** A condition of two positions that must be 1. */
    static Band yes(int metAfterMillis, int tripsAfterMillis) {
        return new Band(1, 1, 1, 1, metAfterMillis, tripsAfterMillis);
    }

    /** A value that must not pass an upper limit. */
    static Band atMost(int arm, int trip, int metAfterMillis, int tripsAfterMillis) {
        return new Band(OPEN_BELOW, arm, OPEN_BELOW, trip, metAfterMillis, tripsAfterMillis);
    }

    /** A value that must not pass below a lower limit. */
    static Band atLeast(int arm, int trip, int metAfterMillis, int tripsAfterMillis) {
        return new Band(arm, OPEN_ABOVE, trip, OPEN_ABOVE, metAfterMillis, tripsAfterMillis);
    }

    boolean arms(int value) {
        return value >= armLeast && value <= armGreatest;
    }

    boolean trips(int value) {
        return value < tripLeast || value > tripGreatest;
    }

    /** The arm limit to name beside {@code value}: the one it passes, or the only one there is. */
    int armLimitFor(int value) {
        return nearest(value, armLeast, armGreatest);
    }

    /** The trip limit to name beside {@code value}. */
    int tripLimitFor(int value) {
        return nearest(value, tripLeast, tripGreatest);
    }

    private static int nearest(int value, int least, int greatest) {
        if (greatest == OPEN_ABOVE) {
            return least;
        }
        return least != OPEN_BELOW && value < least ? least : greatest;
    }
}
