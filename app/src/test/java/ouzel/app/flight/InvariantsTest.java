package ouzel.app.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ouzel.app.desk.Act;
import ouzel.app.desk.Conditions;
import ouzel.app.desk.OrderTrack;
import ouzel.app.desk.Phase;
import ouzel.app.desk.Stimulus;
import ouzel.app.journal.MemoryJournal;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.session.PairingKey;
import ouzel.simulator.controller.BootCause;
import ouzel.simulator.plant.Outputs;
import ouzel.simulator.plant.Surroundings.Place;
import ouzel.simulator.profile.ProfileFile;
import ouzel.simulator.radio.Weather;
import ouzel.simulator.rehearsal.Site;

/** The link's invariants over both ends, the radio and the plant, in virtual time. */
final class InvariantsTest {
    private static final Weather STORM = new Weather(0.3, 2, 0.4, 20, 200, 0.3, 1e-5, 0.02, 6_000, List.of());

    private final List<byte[]> sentUp = new ArrayList<>();
    private final MemoryJournal journal = new MemoryJournal();
    private boolean triggersPass = true;
    private VirtualFlight flight = flightIn(Weather.CLEAR, 1);

    @Test
    void aConsoleWithoutTheKeyMovesNothingAndSaysSo() {
        flight = new VirtualFlight(
                world(Weather.CLEAR, 1), journal, PairingKey.of(new byte[PairingKey.LENGTH]), bytes -> true);

        flight.runTo(4_000);
        flight.act(new Act.Arm(Sampler.AIR));
        flight.act(new Act.Trigger(Sampler.AIR));
        flight.runTo(8_000);

        assertThat(flight.state().session().open()).isFalse();
        assertThat(flight.payload().truth().air().onMillis()).isZero();
        assertThat(notes()).anyMatch(note -> note.contains("does not hold this console's pairing key"));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void aTriggerRunsAtMostOnceWhateverTheRadioLosesRepeatsDelaysOrReorders(long seed) {
        flight = flightIn(STORM, seed);
        askAndSettle(Place.ON_GROUND);

        flyWith(new ScriptedOperator(flight, List.of(Sampler.SOIL)), 200_000);

        long triggers = journal.entries().stream()
                .filter(entry -> entry.stimulus().equals(new Stimulus.Acted(new Act.Trigger(Sampler.SOIL))))
                .count();
        assertThat((long) flight.payload().truth().soil().valveOpenings()).isLessThanOrEqualTo(Math.max(1, triggers));
        assertThat(flight.payload().truth().soil().valveOpenings()).isLessThanOrEqualTo(1);
    }

    @Test
    void aTriggerThatAModemHeldBackForSecondsStartsNothing() {
        armed(Sampler.AIR);
        int before = sentUp.size();
        triggersPass = false;
        flight.act(new Act.Trigger(Sampler.AIR));
        flight.runTo(flight.nowMillis() + 3_000);

        sentUp.subList(before, sentUp.size()).forEach(flight.payload()::hear);
        flight.runTo(flight.nowMillis() + 1_000);

        assertThat(flight.payload().truth().air().onMillis()).isZero();
    }

    @Test
    void safeAllStopsARunningPumpWithinTheTimeOfTheLinkAndFiftyMilliseconds() {
        drawing(Sampler.AIR);

        flight.act(new Act.SafeAll());
        flight.runTo(flight.nowMillis() + Weather.CLEAR.mostDelayMillis() + 20 + 50);

        assertThat(flight.payload().outputs()).isEqualTo(Outputs.OFF);
    }

    @Test
    void anArmedSamplerGoesSafeByItselfWhenTheConsoleFallsSilent() {
        armed(Sampler.AIR);

        flight.weather(Weather.CLEAR.with(List.of(new Weather.Outage(0, 3_600_000))));
        flight.runTo(flight.nowMillis() + 1_700);
        assertThat(flight.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.UNKNOWN);
        flight.weather(Weather.CLEAR);
        flight.runTo(flight.nowMillis() + 500);

        assertThat(flight.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.SAFE);
        assertThat(notes()).anyMatch(note -> note.startsWith("Disarmed on board"));
    }

    @Test
    void aRestartOfThePayloadTurnsEverythingOffAndTheConsoleSaysSo() {
        drawing(Sampler.AIR);

        flight.payload().cutPower();
        flight.runTo(flight.nowMillis() + 500);
        flight.payload().restart(BootCause.BROWN_OUT);
        flight.runTo(flight.nowMillis() + 4_000);

        assertThat(flight.payload().outputs()).isEqualTo(Outputs.OFF);
        assertThat(flight.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.SPENT);
        assertThat(flight.state().lane(Sampler.AIR).trigger().orElseThrow().stage())
                .isEqualTo(OrderTrack.Stage.FAILED);
        assertThat(notes()).anyMatch(note -> note.startsWith("The payload restarted"));
    }

    @Test
    void aSecondSamplerCannotBeArmedBesideTheFirst() {
        armed(Sampler.AIR);

        flight.act(new Act.Arm(Sampler.WATER));
        flight.runTo(flight.nowMillis() + 1_000);

        long armed = flight.state().lanes().stream()
                .filter(lane -> lane.phase() == Phase.ARMED)
                .count();
        assertThat(armed).isEqualTo(1);
    }

    @Test
    void aLinkGapHidesNothing() {
        flight = flightIn(Weather.CLEAR, 1);
        flight.runTo(1_000);
        askAndSettle(Place.AFLOAT);
        drawing(Sampler.WATER);

        flight.weather(Weather.CLEAR.with(List.of(new Weather.Outage(0, 3_600_000))));
        flight.runTo(flight.nowMillis() + 60_000);
        flight.weather(Weather.CLEAR);
        flight.runTo(flight.nowMillis() + 6_000);

        assertThat(notes()).anyMatch(note -> note.contains("Draw completed") && note.contains("recovered"));
        assertThat(flight.state().samples()).hasSize(1);
        assertThat(flight.state().samples().get(0).started())
                .isNotEqualTo(flight.state().samples().get(0).ended());
    }

    @Test
    void replayedTruncatedAndFlippedOrdersAreRefusedCountedShownAndChangeNothing() {
        drawing(Sampler.AIR);
        flight.act(new Act.Stop(Sampler.AIR));
        flight.runTo(flight.nowMillis() + 3_000);
        List<byte[]> heard = List.copyOf(sentUp);
        long onMillis = flight.payload().truth().air().onMillis();
        Phase phase = flight.state().lane(Sampler.AIR).phase();

        for (byte[] frame : heard) {
            flight.payload().hear(frame);
            flight.payload().hear(Arrays.copyOf(frame, frame.length - 5));
            byte[] flipped = frame.clone();
            flipped[frame.length / 2] ^= 4;
            flight.payload().hear(flipped);
        }
        flight.runTo(flight.nowMillis() + 1_000);

        assertThat(flight.payload().truth().air().onMillis()).isEqualTo(onMillis);
        assertThat(flight.state().lane(Sampler.AIR).phase()).isEqualTo(phase);
        assertThat(flight.state().status().orElseThrow().status().refusedFrames())
                .isGreaterThan(heard.size() / 2);
    }

    @Test
    void thePairingKeyStandsInNoJournalAndNoState() {
        drawing(Sampler.AIR);
        byte[] secret = new byte[PairingKey.LENGTH];
        Arrays.fill(secret, (byte) 0x5A);
        PairingKey key = PairingKey.of(secret);

        String state = flight.state().toString() + journal.entries() + key;

        assertThat(state)
                .doesNotContain(HexFormat.of().formatHex(secret))
                .doesNotContain(new String(secret, StandardCharsets.ISO_8859_1));
    }

    @Test
    void aDoseOverTheLimitOnBoardIsRefusedThereWithBothFigures() {
        flight.runTo(4_000);
        flight.act(new Act.SetDose(Sampler.AIR, 5_000));
        flight.act(new Act.Arm(Sampler.AIR));
        flight.runTo(5_000);

        assertThat(flight.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.SAFE);
        assertThat(notes()).anyMatch(note -> note.contains("asked 5000, the payload allows 620"));
    }

    @Test
    void aUsedContainerCannotBeUsedAgainUntilItsChangeIsRecorded() {
        flyWith(new ScriptedOperator(flight, List.of(Sampler.AIR)), 100_000);
        flight.act(new Act.Arm(Sampler.AIR));
        flight.runTo(flight.nowMillis() + 1_000);
        assertThat(flight.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.DONE);

        flight.act(new Act.Reload(Sampler.AIR));
        flight.runTo(flight.nowMillis() + 5_000);

        assertThat(flight.state().lane(Sampler.AIR).phase()).isEqualTo(Phase.SAFE);
        assertThat(Conditions.mayArm(flight.state(), Sampler.AIR)).isTrue();
    }

    private VirtualFlight flightIn(Weather weather, long seed) {
        return new VirtualFlight(world(weather, seed), journal, PairingKey.rehearsal(), bytes -> {
            sentUp.add(bytes);
            return triggersPass;
        });
    }

    private static VirtualFlight.World world(Weather weather, long seed) {
        return new VirtualFlight.World(ProfileFile.reference(), Site.QUARRY, weather, seed);
    }

    private List<String> notes() {
        return flight.state().notes().stream().map(note -> note.sentence()).toList();
    }

    private void askAndSettle(Place place) {
        flight.askPilot(place);
        long patience = flight.nowMillis() + 20_000;
        while (!flight.isPilotSettled() && flight.nowMillis() < patience) {
            flight.step();
        }
        flight.runTo(flight.nowMillis() + 4_000);
    }

    private void armed(Sampler sampler) {
        flight.runTo(flight.nowMillis() + 4_000);
        flight.act(new Act.Arm(sampler));
        flight.runTo(flight.nowMillis() + 500);
        assertThat(flight.state().lane(sampler).phase()).isEqualTo(Phase.ARMED);
    }

    private void drawing(Sampler sampler) {
        armed(sampler);
        flight.act(new Act.Trigger(sampler));
        flight.runTo(flight.nowMillis() + 2_000);
        assertThat(flight.payload().outputs()).isNotEqualTo(Outputs.OFF);
    }

    private void flyWith(ScriptedOperator operator, long longestMillis) {
        long end = flight.nowMillis() + longestMillis;
        while (!operator.isDone() && flight.nowMillis() < end) {
            flight.step();
            if (flight.nowMillis() % 100 == 0) {
                operator.look(flight.state(), flight.nowMillis());
            }
        }
    }
}
