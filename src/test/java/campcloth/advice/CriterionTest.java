package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Wear;
import java.util.List;
import org.junit.jupiter.api.Test;

class CriterionTest {

    private static final long SEED = 11_26;
    private static final int EVENTS = 20;
    private static final List<Wear> WORN = List.of(Camp.TUNIC, new Wear(false, Layer.OUTER, Fit.LOOSE, false, 40, 3));

    /** Whoever asks for scores by the thousand takes the short way: it comes to the same, to the last digit. */
    @Test
    void theScoreAloneIsThatOfTheAssessment() {
        RandomEvents random = new RandomEvents(SEED);
        for (int i = 0; i < EVENTS; i++) {
            Question question = new Question(random.event(), WORN.get(i % WORN.size()), Camp.ALL);
            Judging judging = Camp.ADVISER.judging(question, Camp.ALL.get(0));
            for (Candidate candidate : Camp.ALL) {
                Facts facts = judging.weighed(candidate).facts();
                Criteria.ALL.forEach(criterion -> assertThat(criterion.score(facts))
                        .as("seed %s, %s, %s", SEED, candidate.id(), criterion.name())
                        .isEqualTo(criterion.assess(facts).score()));
            }
        }
    }
}
