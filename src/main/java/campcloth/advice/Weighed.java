package campcloth.advice;

import java.util.Optional;

/**
 * A cloth as judged, with the facts it was judged by.
 *
 * @param judged the judgement
 * @param facts the facts
 */
record Weighed(Judged judged, Facts facts) {

    boolean isOpenToChoice() {
        return judged.verdict() != Verdict.RULED_OUT && judged.suitsDesign();
    }

    Optional<ColdGap> gap() {
        return ColdGap.of(
                facts.spells().stream().map(s -> s.needs()).toList(),
                facts.spells().stream().map(s -> s.warmth()).toList(),
                spell -> true);
    }
}
