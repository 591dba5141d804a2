package campcloth.advice;

import java.util.List;

/** The criteria, in the order they are told. To add one, write its class and put it here; the shares must sum to 1. */
final class Criteria {

    static final List<Criterion> ALL =
            List.of(new Warmth(), new Heat(), new Breathability(), new Itch(), new Fire(), new Weight());

    private Criteria() {}
}
