package ouzel.simulator.plant;

/**
 * What the controller drives. All off is the state of a controller without power.
 *
 * @param waterPump the water pump's switch
 * @param airPump the air pump's switch
 * @param soilValve the coil of the valve that lets gas behind the probe's piston
 */
public record Outputs(boolean waterPump, boolean airPump, boolean soilValve) {
    /** Nothing driven. */
    public static final Outputs OFF = new Outputs(false, false, false);

    public boolean isAllOff() {
        return equals(OFF);
    }
}
