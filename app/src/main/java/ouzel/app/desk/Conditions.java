package ouzel.app.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ouzel.app.desk.ConditionRow.Holding;
import ouzel.app.desk.ConditionRow.PayloadSays;
import ouzel.protocol.message.Capability;
import ouzel.protocol.message.Permissive;
import ouzel.protocol.message.Readings;
import ouzel.protocol.message.Readings.Switch;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.SamplerState;

/** The console's own opinion of every condition, with its own limits: the second of two independent judges. */
public final class Conditions {
    private Conditions() {}

    /** Every condition {@code sampler} needs as it stands in {@code state}, in the order of {@link Condition}. */
    public static List<ConditionRow> rows(DeskState state, Sampler sampler) {
        return Condition.of(sampler).stream()
                .map(condition -> row(state, sampler, condition))
                .toList();
    }

    /**
     * True if every condition holds for the console, and the payload does not say otherwise of any: both judges must
     * agree before anything is asked for.
     */
    public static boolean mayArm(DeskState state, Sampler sampler) {
        return rows(state, sampler).stream().allMatch(row -> row.isMet() && !row.isDisputed());
    }

    /** Bits of the permissives that this payload cannot measure and that a person has confirmed. */
    static int attestedBits(DeskState state, Sampler sampler) {
        int unmeasured = unmeasuredBits(state);
        int bits = 0;
        for (Attestation attestation : state.attestations()) {
            Optional<Permissive> permissive = attestation.condition().permissive();
            if (permissive.isPresent()
                    && permissive.get().concerns(sampler)
                    && attestation.secondsLeft(state.now()) > 0) {
                bits |= permissive.get().bit() & unmeasured;
            }
        }
        return bits;
    }

    private static int unmeasuredBits(DeskState state) {
        return state.identity()
                .map(identity -> Capability.unmeasured(identity.capabilities()))
                .orElse(0);
    }

    private static ConditionRow row(DeskState state, Sampler sampler, Condition condition) {
        return switch (condition) {
            case LINK -> link(state);
            case JOURNAL ->
                computed(
                        condition,
                        state.journal().writing(),
                        state.journal().writing() ? "writing" : state.journal().sentence());
            case RESOLVED -> resolved(state.lane(sampler));
            case FRESH -> fresh(state, sampler);
            case PILOT_SAYS_STOPPED, PEOPLE_CLEAR, SERVICES_CHECKED -> attested(state, condition, PayloadSays.NOTHING);
            default -> ofPermissive(state, sampler, condition);
        };
    }

    private static ConditionRow computed(Condition condition, boolean met, String value) {
        Holding holding = met ? Holding.MET : Holding.UNMET;
        return new ConditionRow(condition, holding, value, "", Evidence.COMPUTED, 0, PayloadSays.NOTHING, "", 0);
    }

    private static ConditionRow link(DeskState state) {
        if (!state.line().up()) {
            return computed(Condition.LINK, false, "no port open");
        }
        if (!state.session().open()) {
            return computed(Condition.LINK, false, "no session");
        }
        long age = state.statusAgeMillis();
        String value = age == Long.MAX_VALUE ? "no status yet" : Words.age(age);
        ConditionRow row = computed(Condition.LINK, state.isLinkFresh(), value);
        return new ConditionRow(
                row.condition(),
                row.holding(),
                value,
                "≤ " + Words.age(DeskState.STALE_AFTER_MILLIS),
                row.evidence(),
                0,
                row.payload(),
                "",
                0);
    }

    private static ConditionRow resolved(Lane lane) {
        return computed(
                Condition.RESOLVED, !lane.isUnresolved(), lane.isUnresolved() ? "an outcome is unknown" : "yes");
    }

    private static ConditionRow fresh(DeskState state, Sampler sampler) {
        Optional<SamplerState> said =
                state.isLinkFresh() ? state.status().map(heard -> heard.status().state(sampler)) : Optional.empty();
        Holding holding = said.map(known -> known.isUsed() || known == SamplerState.FAULT ? Holding.UNMET : Holding.MET)
                .orElse(Holding.UNKNOWN);
        String value = said.map(known -> known.isUsed() ? "used" : known == SamplerState.FAULT ? "in fault" : "fresh")
                .orElse("no data");
        return new ConditionRow(
                Condition.FRESH, holding, value, "", Evidence.MEASURED, age(state), PayloadSays.NOTHING, "", 0);
    }

    private static ConditionRow attested(DeskState state, Condition condition, PayloadSays payload) {
        Optional<Attestation> found = state.attestations().stream()
                .filter(attestation -> attestation.condition() == condition && attestation.secondsLeft(state.now()) > 0)
                .findFirst();
        return new ConditionRow(
                condition,
                found.isPresent() ? Holding.MET : Holding.UNMET,
                found.map(attestation -> "confirmed").orElse("not confirmed"),
                "",
                Evidence.ATTESTED,
                0,
                payload,
                found.map(Attestation::person).orElse(""),
                found.map(attestation -> attestation.secondsLeft(state.now())).orElse(0));
    }

    private static ConditionRow ofPermissive(DeskState state, Sampler sampler, Condition condition) {
        Permissive permissive = condition.permissive().orElseThrow();
        PayloadSays payload = payloadSays(state, permissive);
        if (permissive.isIn(unmeasuredBits(state))) {
            return attested(state, condition, PayloadSays.NOTHING);
        }
        boolean live = state.lane(sampler).phase() == Phase.ARMED
                || state.lane(sampler).phase().isActing();
        Optional<Gauge> gauge = Gauge.of(permissive);
        Holding holding = Holding.UNKNOWN;
        String value = "no data";
        if (state.status().isPresent()) {
            Readings readings = state.status().get().status().readings();
            if (gauge.isPresent()) {
                OptionalInt measured = measured(permissive, readings);
                value = measured.isPresent() ? gauge.get().text(measured.getAsInt()) : "no data";
                holding = measured.isEmpty()
                        ? Holding.UNKNOWN
                        : gauge.get().holds(measured.getAsInt(), live) ? Holding.MET : Holding.UNMET;
            } else {
                holding = switchHolds(permissive, state, sampler) ? Holding.MET : Holding.UNMET;
                value = switchWords(permissive, holding == Holding.MET, readings);
            }
        }
        if (!state.isLinkFresh()) {
            holding = Holding.UNKNOWN;
        }
        return new ConditionRow(
                condition,
                holding,
                value,
                gauge.map(scale -> scale.limit(live)).orElse(""),
                Evidence.MEASURED,
                age(state),
                payload,
                "",
                0);
    }

    private static OptionalInt measured(Permissive permissive, Readings readings) {
        int value = Gauge.value(permissive, readings);
        if (value == Readings.ABSENT) {
            // Never vented is the best that can be said of vented gas; every other absence is no data.
            return permissive == Permissive.NO_VENTED_GAS ? OptionalInt.of(Integer.MAX_VALUE) : OptionalInt.empty();
        }
        return OptionalInt.of(value);
    }

    private static long age(DeskState state) {
        return state.statusAgeMillis();
    }

    private static PayloadSays payloadSays(DeskState state, Permissive permissive) {
        // The payload's one bit for "alone" speaks for whichever sampler is armed, not for each of the three.
        if (!state.isLinkFresh() || permissive == Permissive.ALONE) {
            return PayloadSays.NOTHING;
        }
        int met = state.status().orElseThrow().status().permissivesMet();
        return permissive.isIn(met) ? PayloadSays.MET : PayloadSays.UNMET;
    }

    private static boolean switchHolds(Permissive permissive, DeskState state, Sampler sampler) {
        Readings readings = state.status().orElseThrow().status().readings();
        return switch (permissive) {
            case PLUG_FITTED -> readings.is(Switch.PLUG);
            case SELF_TEST -> readings.is(Switch.SELF_TEST);
            case ALONE -> isAlone(state, sampler);
            case AFLOAT -> readings.floatsWet() >= 2;
            case INTAKE_WET -> readings.is(Switch.INTAKE);
            case JAR_EMPTY -> !readings.is(Switch.JAR_FULL);
            case BAY_DRY -> !readings.is(Switch.BAY_WET);
            case INLET_DRY -> !readings.is(Switch.INLET);
            case ON_GROUND -> readings.is(Switch.LEGS);
            case FLOATS_DRY -> readings.floatsWet() == 0;
            case PROBE_HOME -> readings.is(Switch.PROBE_HOME);
            default -> throw new IllegalArgumentException("permissive : " + permissive + " (expected: a switch)");
        };
    }

    private static boolean isAlone(DeskState state, Sampler sampler) {
        return state.lanes().stream()
                .filter(lane -> lane.sampler() != sampler)
                .noneMatch(lane -> lane.phase() == Phase.ARMED || lane.phase().isActing() || lane.isUnresolved());
    }

    private static String switchWords(Permissive permissive, boolean met, Readings readings) {
        return switch (permissive) {
            case AFLOAT, FLOATS_DRY -> readings.floatsWet() + " of 3 floats wet";
            default -> met ? "yes" : "no";
        };
    }
}
