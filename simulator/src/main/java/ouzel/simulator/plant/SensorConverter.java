package ouzel.simulator.plant;

/** A sensor and its converter: adds offset and noise, clips to the range, and knows only so many values. */
final class SensorConverter {
    private static final int TEN_BITS = 1_023;

    private final double least;
    private final double unitsPerCode;
    private final double codesPerUnit;
    private final int highestCode;
    private final double offset;
    private final double noiseUnits;
    private final Noise noise;

    private SensorConverter(
            double least, double unitsPerCode, int highestCode, double offset, double noiseUnits, Noise noise) {
        this.least = least;
        this.unitsPerCode = unitsPerCode;
        this.codesPerUnit = 1 / unitsPerCode;
        this.highestCode = highestCode;
        this.offset = offset;
        this.noiseUnits = noiseUnits;
        this.noise = noise;
    }

    /**
     * The controller's own converter over {@code least} to {@code greatest} in the sensor's unit.
     *
     * @param offset of this very sensor, same unit
     * @param noiseUnits standard deviation of the noise, same unit
     */
    static SensorConverter analogue(double least, double greatest, double offset, double noiseUnits, Noise noise) {
        double unitsPerCode = (greatest - least) / TEN_BITS;
        return new SensorConverter(least, unitsPerCode, TEN_BITS, offset, noiseUnits, noise);
    }

    /** A sensor that converts by itself, to whole units. */
    static SensorConverter digital(int least, int greatest, double offset, double noiseUnits, Noise noise) {
        return new SensorConverter(least, 1, greatest - least, offset, noiseUnits, noise);
    }

    /** What the controller makes of {@code value}, rounded to whole units. */
    int read(double value) {
        double seen = value + offset + noiseUnits * noise.bell();
        int code = (int) ((seen - least) * codesPerUnit + 0.5);
        int clipped = Math.max(0, Math.min(highestCode, code));
        return (int) Math.rint(least + clipped * unitsPerCode);
    }
}
