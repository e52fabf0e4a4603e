package ouzel.app.desk;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Sampler;

/**
 * A condition as the console judges it: its own opinion of every permissive on board, and the conditions that only the
 * console or a person can know.
 *
 * <p>An attestation holds for {@link #attestedForSeconds()}; a condition that cannot be attested has 0 there.
 */
public enum Condition {
    /** A session with the payload is open and its status is fresh. */
    LINK("link fresh", "wait for the link, or bring the antenna up", 0, Evidence.COMPUTED),
    /** The journal is being written. */
    JOURNAL("journal written", "free disk space, then open the desk again", 0, Evidence.COMPUTED),
    /** No earlier order of this sampler is unresolved. */
    RESOLVED("nothing unresolved", "wait: the desk asks the payload what became of it", 0, Evidence.COMPUTED),
    /** The container, bag or probe is unused. */
    FRESH("container fresh", "fit a fresh one, then record it with Reload", 0, Evidence.MEASURED),
    /** @see Permissive#PLUG_FITTED */
    PLUG_FITTED(Permissive.PLUG_FITTED, "fit the arming plug, last of all, with nobody near the probe"),
    /** @see Permissive#BATTERY */
    BATTERY(Permissive.BATTERY, "charge or change the payload battery"),
    /** @see Permissive#SELF_TEST */
    SELF_TEST(Permissive.SELF_TEST, "switch the payload off and on; if it stays, do not fly it"),
    /** @see Permissive#ALONE */
    ALONE(Permissive.ALONE, "stop the other sampler, or wait until it is done"),
    /** @see Permissive#AFLOAT */
    AFLOAT(Permissive.AFLOAT, "ask the pilot to set it down on the water"),
    /** @see Permissive#INTAKE_WET */
    INTAKE_WET(Permissive.INTAKE_WET, "ask the pilot to settle it deeper or clear of weed"),
    /** @see Permissive#LEVEL_WATER */
    LEVEL_WATER(Permissive.LEVEL_WATER, "wait for the water to calm, or ask the pilot to move"),
    /** @see Permissive#QUIET */
    QUIET(Permissive.QUIET, "wait for the water to calm"),
    /** @see Permissive#JAR_EMPTY */
    JAR_EMPTY(Permissive.JAR_EMPTY, "the jar reads full: fit an empty one on the ground"),
    /** @see Permissive#BAY_DRY */
    BAY_DRY(Permissive.BAY_DRY, "water in the electronics: bring it home"),
    /** @see Permissive#INLET_DRY */
    INLET_DRY(Permissive.INLET_DRY, "ask the pilot to lift the inlet clear of the water"),
    /** @see Permissive#BAG_SLACK */
    BAG_SLACK(Permissive.BAG_SLACK, "the bag is under pressure: fit an empty one"),
    /** @see Permissive#NO_VENTED_GAS */
    NO_VENTED_GAS(Permissive.NO_VENTED_GAS, "wait until the probe's gas has drifted off"),
    /** @see Permissive#ON_GROUND */
    ON_GROUND(Permissive.ON_GROUND, "ask the pilot to set it down on its legs"),
    /** @see Permissive#FLOATS_DRY */
    FLOATS_DRY(Permissive.FLOATS_DRY, "not on water: ask the pilot to move to dry ground"),
    /** @see Permissive#LEVEL_SOIL */
    LEVEL_SOIL(Permissive.LEVEL_SOIL, "ask the pilot to set it down on flatter ground"),
    /** @see Permissive#STILL */
    STILL(Permissive.STILL, "wait until it stands still"),
    /** @see Permissive#ROTORS_STOPPED */
    ROTORS_STOPPED(Permissive.ROTORS_STOPPED, "ask the pilot to stop the rotors"),
    /** @see Permissive#PROBE_HOME */
    PROBE_HOME(Permissive.PROBE_HOME, "the probe is out: hold take-off, do not approach until vented"),
    /** @see Permissive#GAS_PRESSURE */
    GAS_PRESSURE(Permissive.GAS_PRESSURE, "check regulator and cartridge on the ground, gas vented"),
    /** @see Permissive#STROKES_LEFT */
    STROKES_LEFT(Permissive.STROKES_LEFT, "change the cartridge on the ground, plug out"),
    /** The pilot says that the rotors are stopped. */
    PILOT_SAYS_STOPPED(
            "pilot: rotors stopped", "hear it from the pilot, then confirm", 60, Evidence.ATTESTED, Sampler.SOIL),
    /** The observer says that nobody is near the probe. */
    PEOPLE_CLEAR(
            "nobody near the probe", "hear it from the observer, then confirm", 30, Evidence.ATTESTED, Sampler.SOIL),
    /** Someone has checked what lies under the ground here. */
    SERVICES_CHECKED(
            "no cables or pipes below",
            "check the plans of buried services, then confirm",
            3_600,
            Evidence.ATTESTED,
            Sampler.SOIL);

    private final String words;
    private final String action;
    private final int attestedForSeconds;
    private final Evidence evidence;
    private final Optional<Permissive> permissive;
    private final Set<Sampler> samplers;

    Condition(Permissive permissive, String action) {
        this.words = permissive.words();
        this.action = action;
        this.attestedForSeconds = 60;
        this.evidence = Evidence.MEASURED;
        this.permissive = Optional.of(permissive);
        this.samplers = EnumSet.noneOf(Sampler.class);
        Arrays.stream(Sampler.values()).filter(permissive::concerns).forEach(samplers::add);
    }

    Condition(String words, String action, int attestedForSeconds, Evidence evidence, Sampler... samplers) {
        this.words = words;
        this.action = action;
        this.attestedForSeconds = attestedForSeconds;
        this.evidence = evidence;
        this.permissive = Optional.empty();
        this.samplers = samplers.length == 0 ? EnumSet.allOf(Sampler.class) : EnumSet.copyOf(Arrays.asList(samplers));
    }

    /** The condition as a statement that should be true. */
    public String words() {
        return words;
    }

    /** What the operator can do when it does not hold. */
    public String action() {
        return action;
    }

    /** How long one attestation holds, s; 0 if a person cannot confirm it. */
    public int attestedForSeconds() {
        return attestedForSeconds;
    }

    /** How it is known when every sensor is there. */
    public Evidence evidence() {
        return evidence;
    }

    /** The permissive on board that this is the console's opinion of. */
    public Optional<Permissive> permissive() {
        return permissive;
    }

    /** True if {@code sampler} needs it. */
    public boolean concerns(Sampler sampler) {
        return samplers.contains(sampler);
    }

    /** The conditions {@code sampler} needs, in the order of this enum. */
    public static List<Condition> of(Sampler sampler) {
        return Arrays.stream(values())
                .filter(condition -> condition.concerns(sampler))
                .toList();
    }
}
