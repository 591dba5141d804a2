package campcloth.garment;

import campcloth.figure.Words;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Hems that are folded twice, the row that holds them beside the inner fold. All depths and distances are common practice,
 * no source; that a hem is narrower the more its edge flares agrees with the extension leaflet {@code texas-am-l-359}.
 *
 * <p>Easing: a hem of depth d on a panel whose sides run at an angle a to the grain brings 2 d tan a more width than the
 * panel has at the seam line; where the cloth cannot take that up, the hem becomes narrower, down to 1 cm.
 */
final class TurnedTwice {

    private static final double NARROWEST_CM = 1;
    private static final double RAW_FOLD_CM = 2;
    private static final double USUAL_CM = 2;
    private static final double BULKY_CM = 3;
    private static final double SPARE_CM = 1;
    private static final double FINEST_GSM = 50;

    static final HemRule SPLIT = new HemRule(
            "side split",
            (edge, cloth) -> edge.kind().isSlit(),
            (edge, cloth) -> even(
                    edge,
                    Math.min(1, edge.allowanceCm() / 2),
                    0,
                    1,
                    "A split runs along the grain and uses the seam's own allowance: "
                            + folds(Math.min(1, edge.allowanceCm() / 2), Math.min(1, edge.allowanceCm() / 2))
                            + ", stitched close to the fold so that it lies flat."));

    static final HemRule EDGE = new HemRule(
            "open edge",
            (edge, cloth) -> edge.kind().isOpenEdge(),
            (edge, cloth) -> even(
                    edge,
                    Math.min(1, edge.allowanceCm() / 2),
                    0,
                    1,
                    "An open edge uses the seams' own allowance: "
                            + folds(Math.min(1, edge.allowanceCm() / 2), Math.min(1, edge.allowanceCm() / 2))
                            + ", stitched close to the fold; stay-stitch it first where it runs off the grain."));

    static final HemRule FINE = new HemRule(
            "gauze, voile and thin silk",
            (edge, cloth) -> cloth.isFine(),
            (edge, cloth) -> even(
                    edge,
                    fineDepthCm(cloth),
                    SPARE_CM,
                    1,
                    "Thin cloth takes a narrow hem: " + folds(fineDepthCm(cloth), fineDepthCm(cloth))
                            + ", rolled or folded twice, one row close to the inner fold; anything deeper shows"
                            + " through and drags."));

    static final HemRule FLARED = new HemRule(
            "flared edge",
            (edge, cloth) -> edge.flareTangent() > 0 && easedInCm(edge, cloth) < deepFoldCm(edge, cloth),
            TurnedTwice::narrowed);

    static final HemRule BULKY = new HemRule(
            "bulky cloth",
            (edge, cloth) -> cloth.isBulky(),
            (edge, cloth) -> body(
                    edge,
                    cloth,
                    5,
                    OptionalDouble.empty(),
                    "thick cloth needs room to roll over itself: " + folds(edge, cloth)
                            + ", one row 5 mm from the inner fold"));

    static final HemRule CRISP = new HemRule(
            "crisp cloth",
            (edge, cloth) -> cloth.isCrisp(),
            (edge, cloth) -> body(
                    edge,
                    cloth,
                    2,
                    OptionalDouble.of(5),
                    "crisp cloth folds sharply: " + folds(edge, cloth) + ", stitched 2 mm from the inner fold, and a"
                            + " second row 5 mm from the edge keeps it flat"));

    static final HemRule SOFT = new HemRule(
            "soft cloth",
            (edge, cloth) -> true,
            (edge, cloth) -> body(
                    edge,
                    cloth,
                    2,
                    OptionalDouble.empty(),
                    "soft cloth takes " + folds(edge, cloth) + ", stitched 2 mm from the inner fold; a second row would"
                            + " stiffen it"));

    private TurnedTwice() {}

    private static String folds(double rawCm, double deepCm) {
        return Words.number(rawCm) + " + " + Words.number(deepCm) + " cm";
    }

    private static String folds(HemEdge edge, SewnCloth cloth) {
        return folds(rawFoldCm(edge, cloth), deepFoldCm(edge, cloth));
    }

    private static double usualDepthCm(SewnCloth cloth) {
        return cloth.isBulky() ? BULKY_CM : USUAL_CM;
    }

    /** First fold: what the second leaves of the allowance, from 1 to 2 cm. */
    private static double rawFoldCm(HemEdge edge, SewnCloth cloth) {
        return Math.min(RAW_FOLD_CM, Math.max(NARROWEST_CM, edge.allowanceCm() - usualDepthCm(cloth)));
    }

    /** Second fold. */
    private static double deepFoldCm(HemEdge edge, SewnCloth cloth) {
        return Math.min(usualDepthCm(cloth), edge.allowanceCm() - rawFoldCm(edge, cloth));
    }

    private static double fineDepthCm(SewnCloth cloth) {
        return cloth.weightGsm() < FINEST_GSM ? 0.5 : 1;
    }

    private static Hem body(
            HemEdge edge, SewnCloth cloth, double stitchMm, OptionalDouble secondRowMm, String because) {
        List<Double> folds = List.of(rawFoldCm(edge, cloth), deepFoldCm(edge, cloth));
        double spareCm = edge.allowanceCm() - folds.get(0) - folds.get(1);
        String shape = edge.flareTangent() > 0
                ? "The edge flares, but at this depth its fullness can be eased in; let it hang for a day before"
                        + " marking it; "
                : "On a straight edge, ";
        return new Hem(
                edge.kind().words(),
                edge.lengthCm(),
                edge.allowanceCm(),
                0,
                folds,
                stitchMm,
                secondRowMm,
                false,
                shape
                        + because
                        + (spareCm > 0 ? "; " + Words.number(spareCm) + " cm is left over as extra length." : "."));
    }

    /** Depth whose fullness 2 d tan a the cloth just takes up, in steps of 5 mm, at least {@link #NARROWEST_CM}. */
    static double easableDepthCm(HemEdge edge, SewnCloth cloth) {
        return Math.max(NARROWEST_CM, Math.floor(easedInCm(edge, cloth) * 2) / 2);
    }

    private static double easedInCm(HemEdge edge, SewnCloth cloth) {
        return cloth.easablePercent() / 100 * edge.panelWidthCm() / (2 * edge.flareTangent());
    }

    private static Hem narrowed(HemEdge edge, SewnCloth cloth) {
        double depth = Math.min(easableDepthCm(edge, cloth), edge.allowanceCm() / 2);
        double fullness = 2 * depth * edge.flareTangent();
        return even(
                edge,
                depth,
                SPARE_CM,
                2,
                "The edge flares: folded " + Words.number(depth) + " cm deep it still brings "
                        + Words.fixed(fullness, 1)
                        + " cm of fullness a panel to ease in, and this cloth takes up about "
                        + Words.number(cloth.easablePercent()) + " % of " + Words.number(edge.panelWidthCm())
                        + " cm; a deeper hem would pucker. Let it hang for a day before marking it.");
    }

    /** Two folds alike, one row. */
    private static Hem even(HemEdge edge, double depthCm, double spareCm, double stitchMm, String because) {
        return new Hem(
                edge.kind().words(),
                edge.lengthCm(),
                Math.min(edge.allowanceCm(), 2 * depthCm + spareCm),
                0,
                List.of(depthCm, depthCm),
                stitchMm,
                OptionalDouble.empty(),
                false,
                because);
    }
}
