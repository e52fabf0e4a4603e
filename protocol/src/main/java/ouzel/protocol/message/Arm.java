package ouzel.protocol.message;

/**
 * Asks for a single-use arming token for one sampler.
 *
 * @param sampler the sampler to arm
 * @param dose the asked amount: mL of water, mL of air at ambient conditions, or ms of valve opening for soil, 1 to
 *     65 535; held to the on-board limit
 * @param attested bits of the permissives whose sensor this payload does not have and that a named person has
 *     confirmed; bits of measured permissives are ignored
 */
public record Arm(Sampler sampler, int dose, int attested) implements Order {

    /** Refuses a field that is out of its range with an {@link IllegalArgumentException} that names it. */
    public Arm {
        Checks.range("dose", dose, 1, 0xFFFF);
    }
}
