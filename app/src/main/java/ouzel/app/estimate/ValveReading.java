package ouzel.app.estimate;

/**
 * What the coil current of one valve opening says.
 *
 * @param moved true if the dip of a seating plunger was seen
 * @param dipMillis when the plunger seated, ms after switching on; 0 if it did not
 * @param dipMilliamps depth of the dip, mA; 0 if there is none
 * @param steadyMilliamps mean current of the last 10 ms, mA
 */
public record ValveReading(boolean moved, double dipMillis, double dipMilliamps, double steadyMilliamps) {}
