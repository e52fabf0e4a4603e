package ouzel.simulator.plant;

/**
 * Where the payload hangs or stands, as the pilot has put it.
 *
 * @param place aloft, afloat or on the ground
 * @param rotorsTurning true while the aircraft's rotors turn
 * @param tiltDegrees mean tilt from the vertical, degrees
 * @param wavesMilligees root mean square of the motion that waves or flight give, mg
 * @param temperatureCelsius ambient temperature, degrees Celsius
 * @param pressurePascals ambient pressure, Pa
 * @param soilConeIndexMegapascals resistance of the ground to a driven probe, MPa; used on the ground only
 */
public record Surroundings(
        Place place,
        boolean rotorsTurning,
        double tiltDegrees,
        double wavesMilligees,
        double temperatureCelsius,
        double pressurePascals,
        double soilConeIndexMegapascals) {

    /** What carries the payload. */
    public enum Place {
        /** Hanging under the flying aircraft. */
        ALOFT,
        /** On its floats. */
        AFLOAT,
        /** On its legs. */
        ON_GROUND
    }
}
