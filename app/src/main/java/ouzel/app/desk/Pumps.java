package ouzel.app.desk;

import ouzel.app.estimate.PumpModel;
import ouzel.protocol.message.Sampler;

/**
 * What the console believes of the pumps of the reference payload, before they were weighed on the bench:
 * free flow less what the lift takes, at 12 V. The water pump has to lift its sample by about 0.45 m.
 */
final class Pumps {
    /** Unit-to-unit spread of a small pump: +/-5 % taken as uniform gives 2.9 %; common practice, no source. */
    private static final double SPREAD = 0.03;

    private static final PumpModel WATER = new PumpModel(8.0, 12_000, 650, 1_100, true, 11, SPREAD);
    private static final PumpModel AIR = new PumpModel(20.6, 12_000, 370, 450, false, 0, SPREAD);

    private Pumps() {}

    static PumpModel of(Sampler sampler) {
        return switch (sampler) {
            case WATER -> WATER;
            case AIR -> AIR;
            case SOIL -> throw new IllegalArgumentException("sampler : SOIL (expected: one with a pump)");
        };
    }
}
