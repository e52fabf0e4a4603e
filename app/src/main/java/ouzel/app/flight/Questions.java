package ouzel.app.flight;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Harmless questions asked again and again to learn how long answers take. Each is repeated like an order until it is
 * answered or given up, so that what is measured is what an operator would wait.
 *
 * <p><b>Time:</b> handed in. <b>Thread:</b> one at a time.
 */
final class Questions {
    /** Pause between two new questions, ns. */
    static final long PAUSE_NANOS = 200_000_000;
    /** An unanswered question is repeated after this time, ns. */
    static final long REPEAT_NANOS = 400_000_000;
    /** A question is given up after this time, ns. */
    static final long GIVEN_UP_NANOS = 3_000_000_000L;

    /** Ids of questions are taken from here on, far from those that a desk gives its orders. */
    private static final long FIRST_ID = 0xE000_0000L;

    private final Map<Long, Asked> open = new LinkedHashMap<>();
    private long nextId = FIRST_ID;
    private long nextNanos = Long.MIN_VALUE;
    private int asked;
    private int answered;

    private record Asked(long firstNanos, long lastNanos) {}

    /** Ids of the questions to send now, new ones and repeats. */
    List<Long> due(long nowNanos) {
        open.values().removeIf(question -> nowNanos - question.firstNanos() >= GIVEN_UP_NANOS);
        if (nextNanos == Long.MIN_VALUE || nowNanos - nextNanos >= 0) {
            nextNanos = nowNanos + PAUSE_NANOS;
            open.put(nextId++, new Asked(nowNanos, nowNanos - REPEAT_NANOS));
            asked++;
        }
        List<Long> due = new ArrayList<>();
        open.replaceAll((id, question) -> {
            if (nowNanos - question.lastNanos() < REPEAT_NANOS) {
                return question;
            }
            due.add(id);
            return new Asked(question.firstNanos(), nowNanos);
        });
        return due;
    }

    /** An answer came; of several to one question the first counts. */
    void answered(long id) {
        if (open.remove(id) != null) {
            answered++;
        }
    }

    /** Questions asked so far that an answer in time could have come to. */
    int asked(long nowNanos, long timeNanos) {
        return asked
                - (int) open.values().stream()
                        .filter(question -> nowNanos - question.firstNanos() < timeNanos)
                        .count();
    }

    /** Questions answered so far. */
    int answered() {
        return answered;
    }
}
