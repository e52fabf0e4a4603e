package ouzel.simulator.plant;

/** How the payload sways, heaves and shakes about what the pilot and the water do to it. */
final class BodyMotion {
    private static final double SWAY_SECONDS = 0.7;
    private static final double SWAY_KEPT = Math.exp(-Plant.STEP_SECONDS / SWAY_SECONDS);
    private static final double SWAY_ADDED = Math.sqrt(1 - SWAY_KEPT * SWAY_KEPT);
    /** Degrees of sway, root mean square, for each mg of waves. */
    private static final double DEGREES_PER_MILLIGEE = 0.012;
    /** Millimetres of heave, root mean square, for each mg of waves. */
    private static final double MILLIMETRES_PER_MILLIGEE = 0.25;
    /** What the sensor shows when all is still. */
    private static final double FLOOR_MILLIGEES = 6;

    private static final double ROTOR_MILLIGEES = 320;
    private static final double WATER_PUMP_MILLIGEES = 14;
    private static final double AIR_PUMP_MILLIGEES = 6;
    private static final double STROKE_MILLIGEES = 140;
    /** Part of a change that shows in a step: the sensor's mean runs over about a second. */
    private static final double SECOND = 1 - Math.exp(-Plant.STEP_SECONDS / 0.4);

    private final Noise noise;
    private double sway;
    private double heave;
    private double unsteadiness;
    private double milligees;
    private double vibration;
    private double waveScale;

    BodyMotion(Noise noise) {
        this.noise = noise;
    }

    /**
     * Moves on by one step.
     *
     * @param waterPump the water pump shakes the frame
     * @param airPump the air pump does
     * @param stroking the probe is on its way
     */
    void step(Surroundings surroundings, boolean waterPump, boolean airPump, boolean stroking) {
        sway = sway * SWAY_KEPT + SWAY_ADDED * noise.bell();
        heave = heave * SWAY_KEPT + SWAY_ADDED * noise.bell();
        unsteadiness = unsteadiness * SWAY_KEPT + SWAY_ADDED * noise.bell();
        double waves = surroundings.wavesMilligees() * (1 + 0.12 * unsteadiness);
        double wanted = FLOOR_MILLIGEES + waves + (stroking ? STROKE_MILLIGEES : 0);
        milligees += (wanted - milligees) * SECOND;
        double rotors = surroundings.rotorsTurning() ? ROTOR_MILLIGEES * (1 + 0.1 * unsteadiness) : FLOOR_MILLIGEES;
        double pumps = (waterPump ? WATER_PUMP_MILLIGEES : 0) + (airPump ? AIR_PUMP_MILLIGEES : 0);
        vibration += (rotors + pumps - vibration) * SECOND;
        waveScale = surroundings.wavesMilligees();
    }

    /** Tilt about its mean, degrees. */
    double swayDegrees() {
        return sway * waveScale * DEGREES_PER_MILLIGEE;
    }

    /** Height of the water over its mean at the intake, mm. */
    double heaveMillimetres() {
        return heave * waveScale * MILLIMETRES_PER_MILLIGEE;
    }

    double milligees() {
        return milligees;
    }

    double vibrationMilligees() {
        return vibration;
    }
}
