package campcloth.errand;

import campcloth.advice.Judged;
import campcloth.advice.Verdict;
import campcloth.advice.Warning;
import campcloth.fire.RuleOutcome;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A cloth as it was judged for each of its wearers: the same garment hangs otherwise on another body. The worst counts for all.
 *
 * @param first as judged for the first
 * @param others as judged for the others
 */
record ForEverybody(Judged first, List<Judged> others) {

    Verdict verdict() {
        return worst().verdict();
    }

    /** What the rules say of the one who is worst off. */
    List<RuleOutcome> rules() {
        return worst().rules();
    }

    /** All of them, each once, the most urgent first. */
    List<Warning> warnings() {
        return all().flatMap(judged -> judged.warnings().stream())
                .distinct()
                .sorted(Comparator.comparing(Warning::severity).reversed())
                .toList();
    }

    /** The first of those with the worst verdict. */
    private Judged worst() {
        Verdict worst =
                all().map(Judged::verdict).max(Comparator.naturalOrder()).orElseThrow();
        return all().filter(judged -> judged.verdict() == worst).findFirst().orElseThrow();
    }

    private Stream<Judged> all() {
        return Stream.concat(Stream.of(first), others.stream());
    }
}
