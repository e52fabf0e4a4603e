package ouzel.app.screen;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import ouzel.app.desk.Act;
import ouzel.app.desk.DeskState;

/** A desk that shows what it is told to and keeps what the operator does. */
final class FakeFeed implements DeskFeed {
    private final AtomicReference<DeskState> state;
    private final AtomicInteger looks = new AtomicInteger();
    private final List<Act> acts = new CopyOnWriteArrayList<>();

    FakeFeed(DeskState first) {
        state = new AtomicReference<>(first);
    }

    void show(DeskState next) {
        state.set(next);
    }

    /** How often the screen has asked. */
    int looks() {
        return looks.get();
    }

    List<Act> acts() {
        return acts;
    }

    /** Another state every time, as a desk that lives gives. */
    @Override
    public DeskState latest() {
        looks.incrementAndGet();
        DeskState last = state.get();
        return new DeskState(
                last.now(),
                last.plan(),
                last.line(),
                last.session(),
                last.status(),
                last.identity(),
                last.link(),
                last.journal(),
                last.lanes(),
                last.safeAll(),
                last.attestations(),
                last.samples(),
                last.notes(),
                last.ledger(),
                last.settling());
    }

    @Override
    public void act(Act act) {
        acts.add(act);
    }
}
