package ouzel.app.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class QuestionsTest {
    private static final long MILLI = 1_000_000;

    private final Questions questions = new Questions();

    @Test
    void aNewQuestionIsAskedFiveTimesASecond() {
        int asked = 0;
        for (long millis = 0; millis < 2_000; millis += 50) {
            for (long id : questions.due(millis * MILLI)) {
                questions.answered(id);
                asked++;
            }
        }

        assertThat(asked).isEqualTo(10);
        assertThat(questions.answered()).isEqualTo(10);
    }

    @Test
    void anUnansweredQuestionIsRepeatedAndThenGivenUp() {
        long first = questions.due(0).get(0);
        int times = 1;
        for (long millis = 50; millis < 6_000; millis += 50) {
            times += questions.due(millis * MILLI).contains(first) ? 1 : 0;
        }

        assertThat(times).isEqualTo(8);
    }

    @Test
    void aSecondAnswerToTheSameQuestionCountsOnce() {
        long id = questions.due(0).get(0);

        questions.answered(id);
        questions.answered(id);

        assertThat(questions.answered()).isEqualTo(1);
    }

    @Test
    void aQuestionThatIsStillInTimeIsNotOverdue() {
        List<Long> first = questions.due(0);
        questions.due(900 * MILLI);

        assertThat(first).hasSize(1);
        assertThat(questions.asked(1_000 * MILLI, 1_000 * MILLI)).isEqualTo(1);
    }
}
