package ouzel.simulator.rehearsal;

import java.util.List;
import java.util.Optional;

/**
 * A place to rehearse at: what the payload meets there.
 *
 * @param name the site's name
 * @param airCelsius air temperature, degrees Celsius
 * @param pressurePascals ambient pressure, Pa
 * @param wavesMilligees root mean square of the motion afloat, mg
 * @param groundTiltDegrees slope of the ground, degrees
 * @param coneIndexMegapascals resistance of the ground to a driven probe, MPa
 */
public record Site(
        String name,
        double airCelsius,
        double pressurePascals,
        double wavesMilligees,
        double groundTiltDegrees,
        double coneIndexMegapascals) {

    /** The flooded quarry: sheltered water, a shelf of soft silt. */
    public static final Site QUARRY = new Site("Quarry north shelf", 14, 99_600, 35, 2.0, 0.5);
    /** The reed bed below the quarry: shallow, a little wind, peat. */
    public static final Site REED_BED = new Site("Reed bed inlet", 13, 99_900, 60, 3.5, 0.3);
    /** The closed landfill beside it: a drainage pond, capped ground. */
    public static final Site LANDFILL = new Site("Landfill drain pond", 15, 99_500, 25, 4.5, 1.1);

    /** The sites of the invented campaign, in the order in which they are sampled: cleanest first. */
    public static final List<Site> CAMPAIGN = List.of(QUARRY, REED_BED, LANDFILL);

    /** The campaign's site of this name, whatever its case. */
    public static Optional<Site> named(String name) {
        return CAMPAIGN.stream()
                .filter(site -> site.name().equalsIgnoreCase(name))
                .findFirst();
    }
}
