package ouzel.simulator.rehearsal;

import ouzel.protocol.message.Sampler;
import ouzel.simulator.plant.Surroundings.Place;

/**
 * A pilot who flies the plan by himself: aloft until the air sampler is used, then to the water until the water sampler
 * is used, then to the ground. He stays where he is while a draw or stroke is under way. Whoever asks for a place gets
 * it; from then on he waits to be asked again.
 */
public final class PlanPilot {
    private final SimulatedPayload payload;
    private boolean asked;

    public PlanPilot(SimulatedPayload payload) {
        this.payload = payload;
    }

    /** Goes where he is asked to and follows the plan no longer. */
    public void ask(Place place) {
        asked = true;
        payload.pilot().ask(place);
    }

    /** Looks whether it is time to move on; call after each step of the payload. */
    public void step() {
        if (!asked && !payload.isActing()) {
            payload.pilot().ask(nextPlace());
        }
    }

    private Place nextPlace() {
        if (!payload.isUsed(Sampler.AIR)) {
            return Place.ALOFT;
        }
        return payload.isUsed(Sampler.WATER) ? Place.ON_GROUND : Place.AFLOAT;
    }
}
