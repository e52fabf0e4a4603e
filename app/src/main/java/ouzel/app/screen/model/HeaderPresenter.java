package ouzel.app.screen.model;

import java.util.Locale;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.OrderTrack;
import ouzel.protocol.session.LinkHealth;

/** The strip on top of the desk. */
final class HeaderPresenter {
    /** Below this share of delivered frames the link is worth a look. */
    private static final double POOR_DELIVERY = 0.9;

    private HeaderPresenter() {}

    static HeaderView view(Freshness freshness, boolean batteryHolds) {
        return new HeaderView(
                link(freshness),
                LinkWords.lines(freshness.state().link()),
                battery(freshness, batteryHolds),
                clock(freshness),
                new Cell("Site", freshness.state().plan().site(), "", Standing.LIVE, Attention.CALM),
                status(freshness),
                safeAll(freshness.state()));
    }

    private static Cell link(Freshness freshness) {
        LinkHealth link = freshness.state().link();
        String value = Words.percent(link.deliveryRatio()) + "   " + Words.millis(link.roundTripMillis());
        String age = freshness.standing() == Standing.NONE ? "no data" : Words.age(freshness.statusAgeMillis());
        return new Cell("Link", value, age, freshness.standing(), linkAttention(freshness, link));
    }

    private static Attention linkAttention(Freshness freshness, LinkHealth link) {
        if (!freshness.isFresh()) {
            return freshness.state().isAnythingLive() ? Attention.ALARM : Attention.NOTICE;
        }
        return link.deliveryRatio() < POOR_DELIVERY ? Attention.NOTICE : Attention.CALM;
    }

    private static Cell battery(Freshness freshness, boolean holds) {
        String value = freshness
                .state()
                .status()
                .map(heard -> heard.status().readings())
                .map(readings -> Words.reading(readings.batteryMillivolts(), 1000, 2, "V") + "   "
                        + Words.reading(readings.batteryMilliamps(), 1000, 2, "A"))
                .orElse(Words.NO_VALUE + " V");
        String note = holds ? freshness.ageIfStale() : "low";
        return new Cell(
                "Payload battery", value, note, freshness.standing(), holds ? Attention.CALM : Attention.NOTICE);
    }

    private static Cell clock(Freshness freshness) {
        String value = freshness
                .state()
                .status()
                .map(heard -> Words.payloadClock(heard.payloadMillis()))
                .orElse("t+ " + Words.NO_VALUE);
        String starts = freshness
                .state()
                .status()
                .map(heard -> "start " + heard.status().bootCount())
                .orElse("");
        String note = freshness.standing() == Standing.LIVE ? starts : freshness.ageIfStale();
        return new Cell("Payload clock", value, note, freshness.standing(), Attention.CALM);
    }

    private static Alert status(Freshness freshness) {
        DeskState state = freshness.state();
        if (freshness.isDeskSilent()) {
            return new Alert(
                    Attention.ALARM,
                    "The desk has stopped: nothing new for " + freshness.silentMillis() / 1000
                            + " s. What is shown is old. Pull back: the payload goes safe by itself.");
        }
        if (!state.journal().writing()) {
            return new Alert(
                    Attention.ALARM, "Journal not written: " + state.journal().sentence());
        }
        if (!state.line().up()) {
            return new Alert(Attention.NOTICE, "No line: " + state.line().sentence());
        }
        if (!state.session().open()) {
            return new Alert(Attention.NOTICE, "No session: " + state.session().sentence());
        }
        return new Alert(Attention.CALM, connected(state));
    }

    private static String connected(DeskState state) {
        String firmware = state.identity()
                .map(identity -> (identity.simulated() ? "simulated payload " : "payload ")
                        + state.session().payload() + " (" + identity.firmware() + ")")
                .orElse("payload " + state.session().payload());
        int refused =
                state.status().map(heard -> heard.status().refusedFrames()).orElse(0);
        String counted = refused == 0 ? "" : "  ·  " + frames(refused) + " refused on board";
        String corrupt =
                state.link().corrupt() == 0 ? "" : "  ·  " + frames(state.link().corrupt()) + " corrupt";
        return state.line().sentence() + "  ·  " + firmware + "  ·  journal written" + counted + corrupt;
    }

    private static String frames(long count) {
        return count == 1 ? "1 frame" : count + " frames";
    }

    private static Alert safeAll(DeskState state) {
        return state.safeAll().map(HeaderPresenter::safeAllTrack).orElse(new Alert(Attention.CALM, ""));
    }

    private static Alert safeAllTrack(OrderTrack track) {
        OrderTrack.Step first = track.steps().get(0);
        OrderTrack.Step last = track.steps().get(track.steps().size() - 1);
        return switch (track.stage()) {
            case SENT, ACCEPTED, STARTED, PROGRESS ->
                new Alert(
                        Attention.NOTICE,
                        String.format(
                                Locale.ROOT,
                                "safe-all %s, sent %d times",
                                track.stage().word(),
                                track.sends()));
            case COMPLETED ->
                new Alert(
                        Attention.CALM,
                        "safe-all completed " + Words.after(last.at().secondsSince(first.at())));
            case REFUSED, FAILED, UNKNOWN ->
                new Alert(Attention.ALARM, "safe-all " + track.stage().word() + ": " + track.words());
        };
    }
}
