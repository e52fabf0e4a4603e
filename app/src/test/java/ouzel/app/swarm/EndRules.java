package ouzel.app.swarm;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Lane;
import ouzel.app.desk.OrderTrack;

/** What must be true once the link has been good for a while: nothing is lost, open or unknown. */
final class EndRules {
    private EndRules() {}

    /** The first thing that is not settled, as "rule: what"; empty if all is. */
    static Optional<String> unsettled(DeskState desk, Set<Long> recorded, Account account, PlantRules plant) {
        if (!desk.session().open() || !desk.isLinkFresh()) {
            return Optional.of("a good link gives a session: " + desk.session());
        }
        if (desk.ledger().bootCount() != account.boots()) {
            return Optional.of("the console says that the payload restarted: "
                    + desk.ledger().bootCount());
        }
        return record(desk, recorded, account)
                .or(() -> starts(account, plant))
                .or(() -> desk.lanes().stream().flatMap(EndRules::open).findFirst())
                .or(() -> desk.safeAll().filter(OrderTrack::isOpen).map(track -> "nothing stays unknown: " + track));
    }

    private static Optional<String> record(DeskState desk, Set<Long> recorded, Account account) {
        long newest = account.newest().orElseThrow().newestEvent();
        Optional<Long> lost = LongStream.rangeClosed(1, newest)
                .boxed()
                .filter(number -> !recorded.contains(number))
                .findFirst();
        if (lost.isPresent()) {
            return Optional.of("no record is lost: event " + account.events().get(lost.get()));
        }
        return desk.ledger().newestEvent() == newest
                ? Optional.empty()
                : Optional.of(
                        "no record is lost: the desk stands at " + desk.ledger().newestEvent());
    }

    private static Optional<String> starts(Account account, PlantRules plant) {
        Set<Long> told = account.starts().keySet();
        Set<Long> possible = new HashSet<>(plant.startedIds());
        possible.addAll(plant.stoppedAtOnce());
        if (!told.containsAll(plant.startedIds()) || !possible.containsAll(told)) {
            return Optional.of("every start is told once: " + told + " for " + plant.startedIds());
        }
        boolean paired = account.ends().keySet().equals(account.starts().keySet());
        return paired
                ? Optional.empty()
                : Optional.of("every end is told once: " + account.ends().keySet() + " for " + told);
    }

    private static Stream<String> open(Lane lane) {
        return Stream.of(lane.arm(), lane.trigger(), lane.other())
                .flatMap(Optional::stream)
                .filter(OrderTrack::isOpen)
                .map(track -> "nothing stays unknown: " + track);
    }

    /** The rule in "rule: what". */
    static String rule(String unsettled) {
        return unsettled.substring(0, unsettled.indexOf(':'));
    }
}
