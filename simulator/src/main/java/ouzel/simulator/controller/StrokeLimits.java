package ouzel.simulator.controller;

/**
 * What the controller holds the soil stroke to.
 *
 * @param leaveMillis longest time from opening the valve until the probe leaves home, ms
 * @param returnMillis longest time from closing the valve until the probe is home again, ms
 * @param homeMillis how long the home switch must stay closed to prove it, ms
 */
public record StrokeLimits(int leaveMillis, int returnMillis, int homeMillis) {}
