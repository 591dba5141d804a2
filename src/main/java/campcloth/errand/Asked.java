package campcloth.errand;

import campcloth.advice.Question;
import campcloth.advice.Ranking;
import java.util.ArrayList;
import java.util.List;

/**
 * A question with what it presumes.
 *
 * @param question the question
 * @param presumed what nobody said and what was taken for it, in sentences
 */
public record Asked(Question question, List<String> presumed) {

    public Asked {
        presumed = List.copyOf(presumed);
    }

    /** The same with what the ranking took to be worn besides. */
    public List<String> presumed(Ranking ranking) {
        List<String> all = new ArrayList<>(presumed);
        all.addAll(WornBesides.told(ranking.worn()));
        return all;
    }
}
