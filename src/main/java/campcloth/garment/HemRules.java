package campcloth.garment;

import campcloth.figure.Words;
import java.util.List;

/**
 * How edges are hemmed: the first rule that speaks of an edge decides; then what washing will take is added where
 * the cloth was not washed before cutting. The rules are {@link TurnedOnce} and {@link TurnedTwice}. All depths and distances
 * are common practice, no source.
 */
public final class HemRules {

    private static final List<HemRule> ALL = List.of(
            TurnedOnce.NECK,
            TurnedOnce.CUT_EDGE_HOLDS,
            TurnedOnce.PILE,
            TurnedTwice.SPLIT,
            TurnedOnce.BULKY_EDGE,
            TurnedTwice.EDGE,
            TurnedTwice.FINE,
            TurnedOnce.CUFF,
            TurnedTwice.FLARED,
            TurnedTwice.BULKY,
            TurnedTwice.CRISP,
            TurnedTwice.SOFT);

    private HemRules() {}

    /** Names of the rules, in the order in which they are asked. */
    public static List<String> names() {
        return ALL.stream().map(HemRule::name).toList();
    }

    /** How the edge is hemmed in this cloth. */
    public static Hem hem(HemEdge edge, SewnCloth cloth) {
        Hem hem = ALL.stream()
                .filter(rule -> rule.speaksOf().test(edge, cloth))
                .findFirst()
                .orElseThrow()
                .hem()
                .apply(edge, cloth);
        double shrinkageCm = cloth.alongCm(edge.hangsFromCm()) - edge.hangsFromCm();
        if (shrinkageCm <= 0) {
            return hem;
        }
        return hem.withShrinkage(
                shrinkageCm,
                "The cloth was not washed before cutting: " + Words.fixed(shrinkageCm, 1)
                        + " cm more are left for washing to take.");
    }
}
