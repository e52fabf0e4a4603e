package ouzel.app.screen.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import ouzel.app.desk.Act;
import ouzel.app.desk.Condition;
import ouzel.app.desk.Conditions;
import ouzel.app.desk.DeskState;
import ouzel.app.desk.Stimulus;
import ouzel.protocol.message.Event;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;
import ouzel.protocol.session.LinkHealth;

class DeskPresenterTest {
    private final DeskPresenter presenter = new DeskPresenter(Conditions::rows, ZoneOffset.UTC);

    @Test
    void aReadySamplerMayBeArmedAndSaysSo() {
        LaneView lane = lane(CraftedDesk.afloat(), Sampler.WATER);

        assertThat(lane.controls().arm()).isTrue();
        assertThat(lane.controls().hold()).isFalse();
        assertThat(lane.controls().hint().sentence()).isEqualTo("Ready: arm with 1.");
        assertThat(lane.ladder().rows()).isEmpty();
        assertThat(lane.ladder().met()).startsWith("14 met: link fresh, ");
    }

    @Test
    void whatStopsYouStandsFirstWithValueLimitAndWhatToDo() {
        LadderView ladder = lane(
                        CraftedDesk.afloat()
                                .payloadSays(~Permissive.LEVEL_WATER.bit())
                                .tilted(163),
                        Sampler.WATER)
                .ladder();

        assertThat(ladder.heading()).isEqualTo("1 of 14 conditions not met");
        LadderView.Row row = ladder.rows().get(0);
        assertThat(row.condition()).isEqualTo(Condition.LEVEL_WATER);
        assertThat(row.words()).contains("level", "16.3°", "limit ≤ 15.0°");
        assertThat(row.detail()).contains("wait for the water to calm", "measured");
    }

    @Test
    void anUnmetConditionForbidsArming() {
        LaneView.Controls controls =
                lane(CraftedDesk.afloat().tilted(163), Sampler.WATER).controls();

        assertThat(controls.arm()).isFalse();
        assertThat(controls.hint().sentence()).isEqualTo("Cannot arm: 1 condition below not met.");
    }

    @Test
    void aDisputeShowsBothOpinionsAndForbidsArming() {
        CraftedDesk desk = CraftedDesk.afloat().payloadSays(~Permissive.LEVEL_WATER.bit());
        LaneView lane = lane(desk, Sampler.WATER);

        assertThat(lane.controls().arm()).isFalse();
        assertThat(lane.ladder().rows().get(0).sign()).isEqualTo(LadderView.Sign.DISPUTED);
        assertThat(lane.ladder().rows().get(0).detail()).startsWith("console: holds; payload: not yet");
    }

    @Test
    void whatAPersonMustSayHasAButtonAndThenAName() {
        CraftedDesk desk = CraftedDesk.afloat();
        assertThat(row(desk, Condition.PEOPLE_CLEAR).confirm()).isEqualTo("Confirm…");

        desk.act(new Act.Attest(Condition.PEOPLE_CLEAR, "J. Moss")).pass(5_000);
        assertThat(row(desk, Condition.PEOPLE_CLEAR).words()).isEqualTo("nobody near the probe   J. Moss, 25 s left");
        assertThat(row(desk, Condition.PEOPLE_CLEAR).sign()).isEqualTo(LadderView.Sign.MET);
    }

    @Test
    void withoutALinkTheUnknownConditionsAreOneLine() {
        LadderView ladder = lane(CraftedDesk.opened(), Sampler.WATER).ladder();

        assertThat(ladder.rows()).extracting(LadderView.Row::condition).containsExactly(Condition.LINK);
        assertThat(ladder.folded()).contains("unknown until the link is fresh", "afloat");
    }

    @Test
    void anArmedSamplerCountsDownAndMayBeHeldOrStopped() {
        LaneView lane = lane(CraftedDesk.afloat().armed(Sampler.WATER), Sampler.WATER);

        assertThat(lane.badge()).isEqualTo(new LaneView.Badge(LaneView.Shape.ARMED, "ARMED", "9 s", Attention.NOTICE));
        assertThat(lane.controls().hold()).isTrue();
        assertThat(lane.controls().stop()).isTrue();
        assertThat(lane.dose().editable()).isFalse();
    }

    @Test
    void onlyTheArmedSamplerMayBeHeld() {
        DeskView view = view(CraftedDesk.afloat().armed(Sampler.WATER));

        assertThat(view.armed()).contains(Sampler.WATER);
        assertThat(view.stoppable()).contains(Sampler.WATER);
        assertThat(view.lane(Sampler.AIR).controls().hold()).isFalse();
    }

    @Test
    void theOrderShowsEveryStageWithItsTime() {
        OrderLine order = lane(CraftedDesk.afloat().drawing(Sampler.WATER, 400), Sampler.WATER)
                .order()
                .orElseThrow();

        assertThat(order.name()).isEqualTo("trigger");
        assertThat(order.stages())
                .extracting(OrderLine.Stage::word)
                .containsExactly("sent", "accepted", "started", "under way", "completed");
        assertThat(order.stages().get(0).time()).matches("\\d\\d:\\d\\d:\\d\\d");
        assertThat(order.stages().get(1).time()).isEqualTo("+0.10 s");
        assertThat(order.stages().get(4).reach()).isEqualTo(OrderLine.Reach.AHEAD);
    }

    @Test
    void aTriggerNobodyAnsweredIsUnknownAndCannotBeRepeated() {
        LaneView lane = lane(CraftedDesk.afloat().triggerUnheard(Sampler.WATER), Sampler.WATER);

        OrderLine order = lane.order().orElseThrow();
        assertThat(order.stages().get(order.stages().size() - 1).word()).isEqualTo("UNKNOWN");
        assertThat(order.attention()).isEqualTo(Attention.ALARM);
        assertThat(lane.badge().shape()).isEqualTo(LaneView.Shape.UNKNOWN);
        assertThat(lane.controls().arm() || lane.controls().hold()).isFalse();
    }

    @Test
    void theFillHasItsUncertaintyAndWhatWasAsked() {
        Cell fill = lane(CraftedDesk.afloat().drawing(Sampler.WATER, 1_000), Sampler.WATER)
                .fill();

        assertThat(fill.value()).matches("[\\d.]+ ± [\\d.]+ mL of 260");
        assertThat(fill.standing()).isEqualTo(Standing.LIVE);
    }

    @Test
    void aFillThatNoLongerComesIsStruckThroughWithItsAge() {
        CraftedDesk desk = CraftedDesk.afloat().drawing(Sampler.WATER, 1_000).passInSilence(2_300);
        LaneView lane = lane(desk, Sampler.WATER);

        assertThat(lane.fill().standing()).isEqualTo(Standing.STALE);
        assertThat(lane.fill().note()).isEqualTo("2.3 s old");
        assertThat(lane.plot().stale()).isTrue();
    }

    @Test
    void aFillOfTheContainerBeforeIsNotShownAsThisOnes() {
        CraftedDesk desk = CraftedDesk.afloat().drawing(Sampler.WATER, 1_000);
        desk.event(Event.Kind.DRAW_COMPLETED, Sampler.WATER, 260)
                .turned(Sampler.WATER, SamplerState.DONE)
                .pass(2_000);
        desk.turned(Sampler.WATER, SamplerState.SAFE).pass(200);

        assertThat(lane(desk, Sampler.WATER).fill().caption()).isEqualTo("last fill");
        assertThat(lane(desk, Sampler.WATER).fill().standing()).isEqualTo(Standing.NONE);
    }

    @Test
    void aSampleShowsItsVerdictWithReasons() {
        CraftedDesk desk = CraftedDesk.afloat().drawing(Sampler.WATER, 1_000);
        desk.event(Event.Kind.DRAW_ENDED_EARLY, Sampler.WATER, 60)
                .turned(Sampler.WATER, SamplerState.SPENT)
                .pass(3_000);

        Alert sample = lane(desk, Sampler.WATER).sample().orElseThrow();
        assertThat(sample.sentence()).startsWith("sample 1 ").contains(" ± ", " mL", "  ·  ");
        assertThat(sample.attention()).isNotEqualTo(Attention.CALM);
    }

    @Test
    void aSpentSamplerAsksForAReload() {
        CraftedDesk desk =
                CraftedDesk.afloat().turned(Sampler.AIR, SamplerState.SPENT).pass(200);
        LaneView.Controls controls = lane(desk, Sampler.AIR).controls();

        assertThat(controls.reload()).isTrue();
        assertThat(controls.arm()).isFalse();
        assertThat(controls.hint().sentence()).contains("fit a fresh bag");
    }

    @Test
    void headerValuesAreStruckThroughWhenTheyAreOld() {
        HeaderView header = view(CraftedDesk.afloat().passInSilence(2_300)).header();

        assertThat(header.battery().standing()).isEqualTo(Standing.STALE);
        assertThat(header.battery().note()).isEqualTo("2.3 s old");
        assertThat(header.link().attention()).isEqualTo(Attention.NOTICE);
    }

    @Test
    void headerShowsLinkBatteryAndPayloadClock() {
        HeaderView header = view(CraftedDesk.afloat()).header();

        assertThat(header.link().value()).isEqualTo("98.7 %   42 ms");
        assertThat(header.battery().value()).isEqualTo("12.10 V   0.15 A");
        assertThat(header.clock().value()).isEqualTo("t+00:00:00");
        assertThat(header.link().attention()).isEqualTo(Attention.CALM);
    }

    @Test
    void theRestOfTheLinksMeasurementStandsBehindItsCell() {
        LinkHealth measured =
                new LinkHealth(987, 13, 0.987, 4, 42, 0.978, 0.9924, 180, 620, 35, 1_700, 316, 9, -12, 21.4);
        HeaderView header = view(CraftedDesk.afloat().feed(new Stimulus.LinkMeasured(measured)))
                .header();

        assertThat(header.linkDetail())
                .contains("98.7 %, surely between 97.8 % and 99.2 %")
                .contains("42 ms, 95 of 100 within 180 ms")
                .contains("Longest silence lately 620 ms, last frame 35 ms ago")
                .contains("35.0 %: 1700 bytes/s down, 316 bytes/s up")
                .contains("corrupt 4, refused on board 9")
                .contains("within 21 ms");
    }

    @Test
    void aDeskThatStoppedDoesNotLookAlive() {
        DeskView view = presenter.view(CraftedDesk.afloat().armed(Sampler.WATER).state(), 1_500);

        assertThat(view.header().status().attention()).isEqualTo(Attention.ALARM);
        assertThat(view.header().battery().standing()).isEqualTo(Standing.STALE);
        assertThat(view.armed()).isEmpty();
        assertThat(view.lane(Sampler.WATER).badge().word()).isEqualTo("UNKNOWN");
        assertThat(view.lane(Sampler.WATER).controls().hold()).isFalse();
    }

    @Test
    void aPlaybackCanBeLookedAtOnly() {
        DeskView view = view(CraftedDesk.afloat().armed(Sampler.WATER)).shownOnly();

        LaneView.Controls controls = view.lane(Sampler.WATER).controls();
        assertThat(view.armed()).isEmpty();
        assertThat(controls.arm() || controls.hold() || controls.stop() || controls.reload())
                .isFalse();
    }

    @Test
    void closingOverSomethingArmedSaysWhatWillHappen() {
        DeskState idle = CraftedDesk.afloat().state();
        DeskState armed = CraftedDesk.afloat().armed(Sampler.WATER).state();

        assertThat(ClosingQuestion.of(idle)).isEmpty();
        assertThat(ClosingQuestion.of(armed).orElseThrow()).contains("WATER is armed", "1.5 s");
    }

    private DeskView view(CraftedDesk desk) {
        return presenter.view(desk.state(), 0);
    }

    private LaneView lane(CraftedDesk desk, Sampler sampler) {
        return view(desk).lane(sampler);
    }

    private LadderView.Row row(CraftedDesk desk, Condition condition) {
        return lane(desk, Sampler.SOIL).ladder().rows().stream()
                .filter(row -> row.condition() == condition)
                .findFirst()
                .orElseThrow();
    }
}
