package ouzel.simulator.physics;

/**
 * A permanent-magnet brushed motor after its electrical transients: {@code V = R I + k w}, {@code T = k I}. Source:
 * any text on electrical machines.
 *
 * @param ohms armature resistance, above 0
 * @param voltSeconds machine constant k, V s/rad and N m/A alike, above 0
 */
public record DcMotor(double ohms, double voltSeconds) {
    private static final double RPM_PER_RADIAN_PER_SECOND = 30 / Math.PI;

    public DcMotor {
        Checks.positive("ohms", ohms);
        Checks.positive("voltSeconds", voltSeconds);
    }

    /** Current in A that holds {@code newtonMetres} of load. */
    public double amperes(double newtonMetres) {
        return Checks.notNegative("newtonMetres", newtonMetres) / voltSeconds;
    }

    /** Current in A with the shaft held. */
    public double stallAmperes(double volts) {
        return Checks.notNegative("volts", volts) / ohms;
    }

    /** Steady speed in rad/s; 0 if the load stalls the motor. */
    public double radiansPerSecond(double volts, double newtonMetres) {
        Checks.notNegative("volts", volts);
        return Math.max(0, (volts - ohms * amperes(newtonMetres)) / voltSeconds);
    }

    /** Steady speed in revolutions per minute; 0 if the load stalls the motor. */
    public double revolutionsPerMinute(double volts, double newtonMetres) {
        return radiansPerSecond(volts, newtonMetres) * RPM_PER_RADIAN_PER_SECOND;
    }
}
