package ouzel.simulator.controller;

/**
 * What the controller holds one pump to, whatever the console asks for.
 *
 * @param inrushBlankMillis time after switching on in which the current is not judged, ms
 * @param primedMilliamps current above which the pump moves its medium, mA
 * @param primedAfterMillis how long the current must stay above that to prove it, ms
 * @param unprimedLimitMillis longest time from switching on until primed, ms
 * @param hardMilliamps current that stops the pump, mA
 * @param hardAfterMillis how long the current must stay above that, ms
 * @param idleMilliamps current below which no motor is there, mA
 * @param idleAfterMillis how long the current must stay below that, ms
 */
public record PumpLimits(
        int inrushBlankMillis,
        int primedMilliamps,
        int primedAfterMillis,
        int unprimedLimitMillis,
        int hardMilliamps,
        int hardAfterMillis,
        int idleMilliamps,
        int idleAfterMillis) {

    /** The usual times around a pump's own two currents. */
    static PumpLimits of(int primedMilliamps, int hardMilliamps) {
        return new PumpLimits(400, primedMilliamps, 150, 8_000, hardMilliamps, 50, 20, 300);
    }
}
