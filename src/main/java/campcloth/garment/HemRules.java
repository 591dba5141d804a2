package campcloth.garment;

import campcloth.figure.Words;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How edges are hemmed: the first rule that speaks of an edge decides; then what the first wash will take is added where
 * the cloth was not washed before cutting. All depths and distances are common practice, no source; that a hem is narrower
 * the more its edge flares agrees with the extension leaflet {@code texas-am-l-359}.
 *
 * <p>Easing: a hem of depth d on a panel whose sides run at an angle a to the grain brings 2 d tan a more width than the
 * panel has at the seam line; where the cloth cannot take that up, the hem becomes narrower, down to 1 cm.
 */
public final class HemRules {

    /** Cloth left at hem and cuff. */
    static final double ALLOWANCE_CM = 5;

    private static final double NARROWEST_CM = 1;
    private static final double SPARE_CM = 1;

    private static final HemRule NECK = new HemRule(
            "faced neck",
            (edge, cloth) -> edge.kind() == HemEdge.Kind.NECK,
            (edge, cloth) -> new Hem(
                    edge.kind().words(),
                    edge.lengthCm(),
                    1,
                    0,
                    List.of(1.0),
                    2,
                    OptionalDouble.empty(),
                    false,
                    "A round edge cannot be folded twice: a facing 4 cm wide takes it in, 1 cm is left inside the"
                            + " facing, and a row 2 mm beside the seam keeps the facing from rolling out."));

    private static final HemRule SPLIT = new HemRule(
            "side split",
            (edge, cloth) -> edge.kind() == HemEdge.Kind.SIDE_SPLIT,
            (edge, cloth) -> new Hem(
                    edge.kind().words(),
                    edge.lengthCm(),
                    2,
                    0,
                    List.of(1.0, 1.0),
                    1,
                    OptionalDouble.empty(),
                    false,
                    "A split runs along the grain and uses the seam's own allowance: 1 + 1 cm, stitched close to the"
                            + " fold so that it lies flat."));

    private static final HemRule CUFF = new HemRule(
            "sleeve end",
            (edge, cloth) -> edge.kind() == HemEdge.Kind.CUFF,
            (edge, cloth) -> new Hem(
                    edge.kind().words(),
                    edge.lengthCm(),
                    ALLOWANCE_CM,
                    0,
                    List.of(2.0),
                    cloth.isCrisp() ? 3 : 18,
                    cloth.isCrisp() ? OptionalDouble.of(18) : OptionalDouble.empty(),
                    true,
                    "A narrow tube turns badly twice: neaten, fold 2 cm once and stitch the edge down, 18 mm from the"
                            + " fold" + (cloth.isCrisp() ? "; on crisp cloth a row 3 mm from the end as well" : "")
                            + ". Of the 5 cm left, 3 cm are for the length: try it on, then trim or fold deeper."));

    private static final HemRule FLARED = new HemRule(
            "flared edge",
            (edge, cloth) -> edge.flareTangent() > 0 && easableDepthCm(edge, cloth) < usualDepthCm(cloth),
            HemRules::narrowed);

    private static final HemRule BULKY = new HemRule(
            "bulky cloth",
            (edge, cloth) -> cloth.isBulky(),
            (edge, cloth) -> bodyHem(
                    edge,
                    List.of(2.0, 3.0),
                    5,
                    OptionalDouble.empty(),
                    "Thick cloth needs room to roll over itself: 2 + 3 cm, one row 5 mm from the fold."));

    private static final HemRule CRISP = new HemRule(
            "straight edge of light crisp cloth",
            (edge, cloth) -> cloth.isCrisp(),
            (edge, cloth) -> bodyHem(
                    edge,
                    List.of(2.0, 2.0),
                    2,
                    OptionalDouble.of(5),
                    "A straight edge of crisp cloth folds sharply: 2 + 2 cm, stitched 2 mm from the inner fold, a"
                            + " second row 5 mm from the edge keeps it flat; 1 cm is left over as extra length."));

    private static final HemRule SOFT = new HemRule(
            "straight edge of soft cloth",
            (edge, cloth) -> true,
            (edge, cloth) -> bodyHem(
                    edge,
                    List.of(2.0, 2.0),
                    2,
                    OptionalDouble.empty(),
                    "A straight edge: 2 + 2 cm, stitched 2 mm from the inner fold; a second row would stiffen soft"
                            + " cloth; 1 cm is left over as extra length."));

    private static final List<HemRule> ALL = List.of(NECK, SPLIT, CUFF, FLARED, BULKY, CRISP, SOFT);

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
                        + " cm more are left for the first wash to take.");
    }

    private static Hem bodyHem(
            HemEdge edge, List<Double> folds, double stitchMm, OptionalDouble secondRowMm, String because) {
        return new Hem(
                edge.kind().words(), edge.lengthCm(), ALLOWANCE_CM, 0, folds, stitchMm, secondRowMm, false, because);
    }

    private static double usualDepthCm(SewnCloth cloth) {
        return cloth.isBulky() ? 3 : 2;
    }

    /** Depth whose fullness 2 d tan a the cloth just takes up, in steps of 5 mm, at least {@link #NARROWEST_CM}. */
    static double easableDepthCm(HemEdge edge, SewnCloth cloth) {
        double depth = cloth.easablePercent() / 100 * edge.panelWidthCm() / (2 * edge.flareTangent());
        return Math.max(NARROWEST_CM, Math.floor(depth * 2) / 2);
    }

    private static Hem narrowed(HemEdge edge, SewnCloth cloth) {
        double depth = easableDepthCm(edge, cloth);
        double fullness = 2 * depth * edge.flareTangent();
        return new Hem(
                edge.kind().words(),
                edge.lengthCm(),
                2 * depth + SPARE_CM,
                0,
                List.of(depth, depth),
                2,
                OptionalDouble.empty(),
                false,
                "The edge flares: folded " + Words.number(depth) + " cm deep it still brings "
                        + Words.fixed(fullness, 1)
                        + " cm of fullness a panel to ease in, and this cloth takes up about "
                        + Words.number(cloth.easablePercent()) + " % of " + Words.number(edge.panelWidthCm())
                        + " cm; a deeper hem would pucker. Let it hang for a day before marking it.");
    }
}
