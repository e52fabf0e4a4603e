package ouzel.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import ouzel.app.desk.ConditionRow.Holding;
import ouzel.app.desk.ConditionRow.PayloadSays;
import ouzel.protocol.message.Arm;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;

/** The console's own opinion, row by row. */
final class ConditionsTest {
    private final DeskBench desk = DeskBench.ready();

    @ParameterizedTest
    @EnumSource(Permissive.class)
    void everyPermissiveOnBoardHasTheConsolesOwnOpinion(Permissive permissive) {
        Condition condition = Condition.valueOf(permissive.name());

        for (Sampler sampler : Sampler.values()) {
            assertThat(condition.concerns(sampler)).isEqualTo(permissive.concerns(sampler));
            assertThat(desk.row(sampler, condition).isPresent()).isEqualTo(permissive.concerns(sampler));
        }
    }

    @Test
    void aTiltOverTheLimitStopsTheArmAndSaysWhatToDo() {
        desk.reads(DeskBench.tilted(112));

        desk.act(new Act.Arm(Sampler.SOIL));

        ConditionRow level = desk.row(Sampler.SOIL, Condition.LEVEL_SOIL).orElseThrow();
        assertThat(level.holding()).isEqualTo(Holding.UNMET);
        assertThat(level.valueAgainstLimit()).isEqualTo("11.2° (limit ≤ 8.0°)");
        assertThat(level.condition().action()).contains("flatter ground");
        assertThat(desk.sendsOf(Arm.class)).isEmpty();
        assertThat(desk.hasNote("Arm not sent")).isTrue();
    }

    @Test
    void anArmedSamplerIsHeldAgainstTheWiderTripLimit() {
        desk.armed(Sampler.WATER).reads(DeskBench.tilted(180));

        ConditionRow level = desk.row(Sampler.WATER, Condition.LEVEL_WATER).orElseThrow();

        assertThat(level.isMet()).isTrue();
        assertThat(level.limit()).isEqualTo("≤ 25.0°");
    }

    @Test
    void aValueOlderThanOneSecondIsUnknownAndSatisfiesNothing() {
        desk.passInSilence(1_100);

        assertThat(Conditions.rows(desk.state(), Sampler.WATER))
                .filteredOn(row -> row.evidence() == Evidence.MEASURED)
                .allMatch(row -> row.holding() == Holding.UNKNOWN);
        assertThat(Conditions.mayArm(desk.state(), Sampler.WATER)).isFalse();
        assertThat(desk.lane(Sampler.WATER).phase()).isEqualTo(Phase.UNKNOWN);
    }

    @Test
    void aSensorWithoutAValueIsUnknown() {
        desk.reads(DeskBench.tilted(Readings.ABSENT));

        ConditionRow level = desk.row(Sampler.WATER, Condition.LEVEL_WATER).orElseThrow();

        assertThat(level.holding()).isEqualTo(Holding.UNKNOWN);
        assertThat(level.value()).isEqualTo("no data");
    }

    @Test
    void whereConsoleAndPayloadDifferBothAreShownAndNothingIsSent() {
        desk.saysUnmet(Permissive.BATTERY).act(new Act.Arm(Sampler.AIR));

        ConditionRow battery = desk.row(Sampler.AIR, Condition.BATTERY).orElseThrow();
        assertThat(battery.isMet()).isTrue();
        assertThat(battery.payload()).isEqualTo(PayloadSays.UNMET);
        assertThat(battery.isDisputed()).isTrue();
        assertThat(desk.sendsOf(Arm.class)).isEmpty();
    }

    @Test
    void aMissingSensorNeedsANamedPersonAndIsNeverAssumed() {
        desk.without(Capability.INTAKE_WET);
        assertThat(Conditions.mayArm(desk.state(), Sampler.AIR)).isFalse();

        desk.act(new Act.Attest(Condition.INLET_DRY, "Mara")).act(new Act.Arm(Sampler.AIR));

        assertThat(desk.lastSend().order()).isEqualTo(new Arm(Sampler.AIR, 600, Permissive.INLET_DRY.bit()));
        assertThat(desk.hasNote("air inlet dry (Mara)")).isTrue();
    }

    @Test
    void anAttestationRunsOut() {
        desk.act(new Act.Attest(Condition.PEOPLE_CLEAR, "Mara")).pass(29_000);
        assertThat(desk.row(Sampler.SOIL, Condition.PEOPLE_CLEAR).orElseThrow().isMet())
                .isTrue();

        desk.pass(1_200);

        assertThat(desk.row(Sampler.SOIL, Condition.PEOPLE_CLEAR).orElseThrow().isMet())
                .isFalse();
    }

    @Test
    void nobodyCanConfirmWhatIsMeasured() {
        desk.reads(DeskBench.tilted(112)).act(new Act.Attest(Condition.LEVEL_SOIL, "Mara"));

        assertThat(desk.row(Sampler.SOIL, Condition.LEVEL_SOIL).orElseThrow().isMet())
                .isFalse();
    }

    @Test
    void aUsedContainerStopsTheArmUntilAChangeIsRecorded() {
        desk.payload(Sampler.WATER, SamplerState.SPENT);

        desk.act(new Act.Arm(Sampler.WATER));

        assertThat(desk.row(Sampler.WATER, Condition.FRESH).orElseThrow().value())
                .isEqualTo("used");
        assertThat(desk.sendsOf(Arm.class)).isEmpty();
    }

    @Test
    void anotherArmedSamplerStopsTheArm() {
        desk.armed(Sampler.WATER).forgetSends().act(new Act.Arm(Sampler.AIR));

        ConditionRow alone = desk.row(Sampler.AIR, Condition.ALONE).orElseThrow();
        assertThat(alone.isMet()).isFalse();
        assertThat(alone.isDisputed()).isFalse();
        assertThat(desk.sendsOf(Arm.class)).isEmpty();
    }

    @Test
    void aJournalThatCannotBeWrittenStopsTheArm() {
        desk.feed(new Stimulus.JournalChanged(false, "disk full")).act(new Act.Arm(Sampler.AIR));

        assertThat(desk.sendsOf(Arm.class)).isEmpty();
        assertThat(desk.row(Sampler.AIR, Condition.JOURNAL).orElseThrow().value())
                .isEqualTo("disk full");
    }

    @Test
    void aRestartOfThePayloadIsSaid() {
        desk.restartsPayload();

        assertThat(desk.hasNote("The payload restarted")).isTrue();
    }
}
