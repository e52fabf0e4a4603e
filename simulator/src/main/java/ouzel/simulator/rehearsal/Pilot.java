package ouzel.simulator.rehearsal;

import ouzel.simulator.plant.Surroundings;
import ouzel.simulator.plant.Surroundings.Place;

/**
 * The simulated pilot, who carries the payload where the operator asks and says what the aircraft does.
 *
 * <p>A move is a short flight, then a setting down, then the rotors stop. Time is virtual, in steps of the payload.
 */
public final class Pilot {
    /** A flight from one place to the next, ms. */
    static final long FLIGHT_MILLIS = 4_000;
    /** From touching down until the rotors stand still, ms. */
    static final long RUN_DOWN_MILLIS = 3_000;

    private static final double FLIGHT_TILT_DEGREES = 4;
    private static final double FLIGHT_MOTION_MILLIGEES = 60;
    private static final double GROUND_MOTION_MILLIGEES = 4;

    private final Site site;
    private Place wanted = Place.ALOFT;
    private Place place = Place.ALOFT;
    private long sinceMillis;

    public Pilot(Site site) {
        this.site = site;
    }

    /** Asks to go to {@code next}; asking for where it is already changes nothing. */
    public void ask(Place next) {
        if (next != wanted) {
            wanted = next;
            place = Place.ALOFT;
            sinceMillis = 0;
        }
    }

    /** Moves time on by {@code millis} and tells what surrounds the payload now. */
    public Surroundings step(int millis) {
        sinceMillis += millis;
        if (place != wanted && sinceMillis >= FLIGHT_MILLIS) {
            place = wanted;
            sinceMillis = 0;
        }
        return new Surroundings(
                place,
                areRotorsTurning(),
                tilt(),
                motion(),
                site.airCelsius(),
                site.pressurePascals(),
                site.coneIndexMegapascals());
    }

    /** What the pilot says, in the words a pilot would use. */
    public String says() {
        if (place != wanted) {
            return wanted == Place.AFLOAT ? "On my way to the water." : "On my way to the ground.";
        }
        return switch (place) {
            case ALOFT -> "Hovering.";
            case AFLOAT -> areRotorsTurning() ? "On the water, rotors running down." : "On the water, rotors stopped.";
            case ON_GROUND -> areRotorsTurning() ? "Landed, rotors running down." : "Landed, rotors stopped.";
        };
    }

    /** Where the payload is now. */
    public Place place() {
        return place;
    }

    /** True once the aircraft is where it was asked to be, and quiet. */
    public boolean isSettled() {
        return place == wanted && (place == Place.ALOFT || !areRotorsTurning());
    }

    private boolean areRotorsTurning() {
        return place == Place.ALOFT || sinceMillis < RUN_DOWN_MILLIS;
    }

    private double tilt() {
        return switch (place) {
            case ALOFT -> FLIGHT_TILT_DEGREES;
            case AFLOAT -> 1;
            case ON_GROUND -> site.groundTiltDegrees();
        };
    }

    private double motion() {
        return switch (place) {
            case ALOFT -> FLIGHT_MOTION_MILLIGEES;
            case AFLOAT -> site.wavesMilligees();
            case ON_GROUND -> GROUND_MOTION_MILLIGEES;
        };
    }
}
