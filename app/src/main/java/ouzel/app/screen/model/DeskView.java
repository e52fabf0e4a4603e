package ouzel.app.screen.model;

import java.util.List;
import java.util.Optional;
import ouzel.protocol.message.Sampler;

/**
 * Everything the desk shows, as text and flags ready to show.
 *
 * @param header the strip on top
 * @param lanes one per sampler, in the order of {@link Sampler}
 * @param armed the sampler that one trigger would start, if any
 * @param stoppable the sampler that the stop key ends, if any
 */
public record DeskView(HeaderView header, List<LaneView> lanes, Optional<Sampler> armed, Optional<Sampler> stoppable) {
    public DeskView {
        lanes = List.copyOf(lanes);
    }

    /** The same with nothing that could be acted on, for a playback. */
    public DeskView shownOnly() {
        List<LaneView> quiet = lanes.stream().map(LaneView::shownOnly).toList();
        return new DeskView(header, quiet, Optional.empty(), Optional.empty());
    }

    /** The lane of one sampler. */
    public LaneView lane(Sampler sampler) {
        return lanes.get(sampler.ordinal());
    }
}
