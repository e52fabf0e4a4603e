package ouzel.app.screen;

import java.util.function.Supplier;
import ouzel.app.desk.Act;
import ouzel.app.desk.Condition;
import ouzel.app.screen.model.CraftedDesk;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;

/** Moments of a flight at which the screen is looked at. */
enum Scene {
    OPENED(CraftedDesk::opened),
    AFLOAT(CraftedDesk::afloat),
    NOT_LEVEL(() ->
            CraftedDesk.afloat().payloadSays(~Permissive.LEVEL_WATER.bit()).tilted(163)),
    PEOPLE_TOLD(() -> CraftedDesk.afloat()
            .act(new Act.Attest(Condition.PEOPLE_CLEAR, "J. Moss"))
            .act(new Act.Attest(Condition.SERVICES_CHECKED, "M. Reed"))
            .pass(2_000)),
    ARMED(() -> CraftedDesk.afloat().armed(Sampler.WATER)),
    DRAWING(() -> CraftedDesk.afloat().drawing(Sampler.WATER, 3_400)),
    STALE(() -> CraftedDesk.afloat().drawing(Sampler.WATER, 1_600).passInSilence(2_300)),
    UNHEARD(() -> CraftedDesk.afloat().triggerUnheard(Sampler.WATER)),
    ENDED_EARLY(() -> CraftedDesk.afloat()
            .drawing(Sampler.WATER, 1_600)
            .event(Event.Kind.DRAW_ENDED_EARLY, Sampler.WATER, 110)
            .turned(Sampler.WATER, SamplerState.SPENT)
            .pass(3_000));

    private final Supplier<CraftedDesk> desk;

    Scene(Supplier<CraftedDesk> desk) {
        this.desk = desk;
    }

    CraftedDesk desk() {
        return desk.get();
    }
}
