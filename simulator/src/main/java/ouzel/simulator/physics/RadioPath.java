package ouzel.simulator.physics;

/** What distance does to a radio link in the open. Range: 1 MHz to 100 GHz, 1 m to 1 000 km. */
public final class RadioPath {
    private static final double LIGHT_METRES_PER_SECOND = 299_792_458;

    private RadioPath() {}

    /**
     * Loss in dB between isotropic antennas in free space: {@code 20 log10(4 pi d / lambda)}. Source: ITU-R P.525-5,
     * equation 5. Not for distances within a few wavelengths.
     */
    public static double freeSpaceLossDecibels(double megahertz, double metres) {
        Checks.within("metres", metres, 1, 1e6);
        return 20 * Math.log10(4 * Math.PI * metres / wavelengthMetres(megahertz));
    }

    /**
     * Radius in m of the first Fresnel zone where the path is divided into the two given distances:
     * {@code sqrt(lambda d1 d2 / (d1 + d2))}. Source: ITU-R P.526, section 2.
     */
    public static double firstFresnelRadiusMetres(double megahertz, double metresBefore, double metresAfter) {
        Checks.within("metresBefore", metresBefore, 0, 1e6);
        Checks.within("metresAfter", metresAfter, 0, 1e6);
        Checks.positive("metresBefore + metresAfter", metresBefore + metresAfter);
        return Math.sqrt(wavelengthMetres(megahertz) * metresBefore * metresAfter / (metresBefore + metresAfter));
    }

    private static double wavelengthMetres(double megahertz) {
        Checks.within("megahertz", megahertz, 1, 100_000);
        return LIGHT_METRES_PER_SECOND / (megahertz * 1e6);
    }
}
