package ouzel.app.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import ouzel.app.desk.Note.Weight;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Reload;
import ouzel.protocol.message.SafeAll;
import ouzel.protocol.message.Sampler;
import ouzel.protocol.message.Stop;
import ouzel.protocol.message.Trigger;

/** What the operator's acts do. The console sends nothing that it believes unsafe, and says why not. */
final class Acts {
    private Acts() {}

    static void acted(Turn turn, Act act) {
        if (act instanceof Act.SafeAll) {
            safeAll(turn);
        } else if (act instanceof Act.Stop stop) {
            stop(turn, stop.sampler());
        } else if (act instanceof Act.Trigger trigger) {
            trigger(turn, trigger.sampler());
        } else if (act instanceof Act.Arm arm) {
            arm(turn, arm.sampler());
        } else if (act instanceof Act.Reload reload) {
            reload(turn, reload.sampler());
        } else if (act instanceof Act.SetDose dose) {
            setDose(turn, dose.sampler(), dose.dose());
        } else if (act instanceof Act.Attest attest) {
            attest(turn, attest);
        } else if (act instanceof Act.Acknowledge acknowledge) {
            turn.unpin(note -> note.number() == acknowledge.note());
        } else if (act instanceof Act.Reconnect) {
            reconnect(turn);
        }
    }

    /** The session itself is the shell's; here it is only said what comes of the wish. */
    private static void reconnect(Turn turn) {
        if (turn.session.open()) {
            turn.note(Weight.PLAIN, "There is a session with the payload already.");
        } else if (turn.line.up()) {
            turn.note(Weight.ATTENTION, "Asking the payload for a session; a console that has it now loses it.");
        } else {
            turn.note(Weight.ATTENTION, "No session can be asked for: " + turn.line.sentence());
        }
    }

    private static void safeAll(Turn turn) {
        long id = turn.nextOrderId();
        Order order = new SafeAll();
        turn.safeAll = Optional.of(OrderTrack.sent(id, order, turn.now));
        for (Sampler sampler : Sampler.values()) {
            turn.change(sampler, lane -> lane.withToken(0, Optional.empty()));
        }
        if (turn.session.open()) {
            turn.send(id, order, Orders.LIFE_MILLIS, Effect.Urgency.AHEAD);
            turn.note(Weight.ATTENTION, "Safe-all asked for; it is repeated until the payload confirms it.");
        } else {
            turn.note(
                    Weight.PINNED,
                    "Safe-all asked for, but there is no session: it goes out when there is one. An armed sampler goes"
                            + " safe by itself 1.5 s after the payload last heard this console.");
        }
    }

    private static void stop(Turn turn, Sampler sampler) {
        if (!turn.session.open()) {
            refuse(turn, sampler, "Stop", "no session with the payload");
            return;
        }
        Lane lane = turn.lane(sampler);
        OrderTrack track = Orders.issue(turn, new Stop(sampler));
        turn.put(lane.withOther(track).withToken(0, Optional.empty()));
        turn.note(sampler, Weight.PLAIN, "Stop asked for.");
    }

    private static void arm(Turn turn, Sampler sampler) {
        Lane lane = turn.lane(sampler);
        if (lane.arm().filter(OrderTrack::isOpen).isPresent()) {
            return;
        }
        if (lane.phase() != Phase.SAFE) {
            refuse(turn, sampler, "Arm", "the sampler is " + lane.phase().word() + ", not safe");
            return;
        }
        if (refusedByConditions(turn, sampler, "Arm")) {
            return;
        }
        int attested = Conditions.attestedBits(turn.state(), sampler);
        OrderTrack track = Orders.issue(turn, new ouzel.protocol.message.Arm(sampler, lane.dose(), attested));
        turn.put(turn.lane(sampler).withArm(track).withToken(0, Optional.empty()));
        turn.note(
                sampler, Weight.PLAIN, "Arm asked for, " + amount(sampler, lane.dose()) + "." + people(turn, sampler));
    }

    /** Who confirmed what of the conditions that were not measured, for the record. */
    private static String people(Turn turn, Sampler sampler) {
        String confirmed = Conditions.rows(turn.state(), sampler).stream()
                .filter(row -> row.evidence() == Evidence.ATTESTED && row.isMet())
                .map(row -> row.condition().words() + " (" + row.person() + ")")
                .collect(Collectors.joining(", "));
        return confirmed.isEmpty() ? "" : " Confirmed: " + confirmed + ".";
    }

    private static void trigger(Turn turn, Sampler sampler) {
        Lane lane = turn.lane(sampler);
        if (lane.trigger().filter(OrderTrack::isOpen).isPresent()) {
            refuse(turn, sampler, "Trigger", "the last one is not resolved yet");
            return;
        }
        if (lane.phase() != Phase.ARMED || lane.token() == 0) {
            refuse(turn, sampler, "Trigger", "the sampler is not armed");
            return;
        }
        if (refusedByConditions(turn, sampler, "Trigger")) {
            return;
        }
        OrderTrack track = Orders.issue(turn, new Trigger(sampler, lane.token()));
        turn.put(turn.lane(sampler).withTrigger(track).withToken(0, Optional.empty()));
        turn.note(sampler, Weight.PLAIN, "Trigger sent.");
    }

    private static boolean refusedByConditions(Turn turn, Sampler sampler, String what) {
        List<ConditionRow> unmet = Conditions.rows(turn.state(), sampler).stream()
                .filter(row -> !row.isMet() || row.isDisputed())
                .toList();
        if (unmet.isEmpty()) {
            return false;
        }
        String why = unmet.stream()
                .map(row -> row.condition().words() + " = " + row.valueAgainstLimit())
                .collect(Collectors.joining("; "));
        refuse(turn, sampler, what, why);
        return true;
    }

    private static void reload(Turn turn, Sampler sampler) {
        Lane lane = turn.lane(sampler);
        if (!turn.session.open()) {
            refuse(turn, sampler, "Reload", "no session with the payload");
        } else if (lane.other().filter(OrderTrack::isOpen).isPresent()) {
            refuse(turn, sampler, "Reload", "the last stop or reload is not resolved yet");
        } else {
            turn.put(turn.lane(sampler).withOther(Orders.issue(turn, new Reload(sampler))));
            turn.note(sampler, Weight.PLAIN, "Fresh container or probe recorded; telling the payload.");
        }
    }

    private static void setDose(Turn turn, Sampler sampler, int dose) {
        if (dose < 1 || dose > 0xFFFF) {
            refuse(turn, sampler, "Dose", "it must be 1 to 65535, not " + dose);
        } else if (turn.lane(sampler).phase() == Phase.ARMED
                || turn.lane(sampler).phase().isActing()) {
            refuse(
                    turn,
                    sampler,
                    "Dose",
                    "the sampler is " + turn.lane(sampler).phase().word());
        } else {
            turn.change(sampler, lane -> lane.withDose(dose));
        }
    }

    private static void attest(Turn turn, Act.Attest attest) {
        if (attest.condition().attestedForSeconds() == 0 || attest.person().isBlank()) {
            turn.note(
                    Weight.ATTENTION,
                    "Not confirmed: " + attest.condition().words() + " needs a named person, or cannot be confirmed.");
            return;
        }
        List<Attestation> next = new ArrayList<>(turn.attestations);
        next.removeIf(known -> known.condition() == attest.condition());
        next.add(new Attestation(attest.condition(), attest.person().strip(), turn.now));
        turn.attestations = next;
        turn.note(
                Weight.PLAIN,
                attest.person().strip() + " confirms: " + attest.condition().words() + " (holds "
                        + attest.condition().attestedForSeconds() + " s).");
    }

    private static void refuse(Turn turn, Sampler sampler, String what, String why) {
        turn.note(sampler, Weight.ATTENTION, what + " not sent: " + why + ".");
        turn.sound(Effect.Cue.ATTENTION);
    }

    static String amount(Sampler sampler, int dose) {
        return dose + (sampler == Sampler.SOIL ? " ms" : " mL");
    }
}
