package ouzel.app.desk;

import java.util.ArrayList;
import java.util.List;
import ouzel.protocol.message.Order;
import ouzel.protocol.message.Outcome;

/**
 * How far one order came, after the stages of verification that space telecommand uses, and when.
 *
 * @param orderId its id
 * @param order what was asked
 * @param stage how far it came
 * @param steps every stage it went through, oldest first
 * @param sends how often it left the console
 * @param lastSent when it, or a question about it, left last
 * @param words why it was refused, failed or is unknown; empty if all is well
 */
public record OrderTrack(
        long orderId, Order order, Stage stage, List<Step> steps, int sends, Moment lastSent, String words) {

    /** How far an order came, as the console knows. */
    public enum Stage {
        /** Left the console; nothing heard yet. */
        SENT("sent"),
        /** The payload found it authentic, in time and allowed. */
        ACCEPTED("accepted"),
        /** Its effect began. */
        STARTED("started"),
        /** Its effect goes on. */
        PROGRESS("under way"),
        /** Its effect is complete, proven on board. */
        COMPLETED("completed"),
        /** Not carried out; nothing moved. */
        REFUSED("refused"),
        /** Begun but not completed. */
        FAILED("failed"),
        /** Sent, and nothing heard: only the payload's record resolves it. */
        UNKNOWN("UNKNOWN");

        private final String word;

        Stage(String word) {
            this.word = word;
        }

        /** The word on the screen. */
        public String word() {
            return word;
        }

        /** True if nothing more is to come. */
        public boolean isFinal() {
            return this == COMPLETED || this == REFUSED || this == FAILED;
        }

        static Stage of(Outcome.Stage stage) {
            return switch (stage) {
                case ACCEPTED -> ACCEPTED;
                case STARTED -> STARTED;
                case PROGRESS -> PROGRESS;
                case COMPLETED -> COMPLETED;
                case REFUSED, NEVER_SEEN -> REFUSED;
                case FAILED -> FAILED;
            };
        }
    }

    /**
     * One stage and when it was reached.
     *
     * @param stage which
     * @param at when the console learnt of it
     */
    public record Step(Stage stage, Moment at) {}

    public OrderTrack {
        steps = List.copyOf(steps);
    }

    /** A track for an order that leaves now. */
    static OrderTrack sent(long orderId, Order order, Moment now) {
        return new OrderTrack(orderId, order, Stage.SENT, List.of(new Step(Stage.SENT, now)), 1, now, "");
    }

    /** The payload is asked what became of it; the order itself does not leave again. */
    OrderTrack askedAbout(Moment now) {
        return new OrderTrack(orderId, order, stage, steps, sends, now, words);
    }

    OrderTrack sentAgain(Moment now) {
        return new OrderTrack(orderId, order, stage, steps, sends + 1, now, words);
    }

    /** This track at {@code next}; a stage that stands already is not entered twice. */
    OrderTrack at(Stage next, String why, Moment now) {
        if (next == stage) {
            return new OrderTrack(orderId, order, stage, steps, sends, lastSent, why);
        }
        List<Step> more = new ArrayList<>(steps);
        more.add(new Step(next, now));
        return new OrderTrack(orderId, order, next, more, sends, lastSent, why);
    }

    /** True while something may still happen because of this order. */
    public boolean isOpen() {
        return !stage.isFinal();
    }
}
