package campcloth.garment;

import campcloth.figure.Words;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Hems that are folded once, the row that holds them just inside the raw edge: sleeve ends, which are too narrow to turn
 * twice, cloth that holds its cut edge, cloth with a pile; and the faced neck. All of it is common practice, no source.
 */
final class TurnedOnce {

    private static final double BODY_CM = 3;
    private static final double CUFF_CM = 2;
    /** How far inside the raw edge the row runs. */
    private static final double INSIDE_MM = 2;

    private static final double NEAR_EDGE_MM = 3;

    static final HemRule NECK = new HemRule(
            "faced neck",
            (edge, cloth) -> edge.kind().isFaced(),
            (edge, cloth) -> new Hem(
                    edge.kind().words(),
                    edge.lengthCm(),
                    edge.allowanceCm(),
                    0,
                    List.of(edge.allowanceCm()),
                    2,
                    OptionalDouble.empty(),
                    false,
                    facing(edge.kind()) + " takes it in, "
                            + Words.number(edge.allowanceCm())
                            + " cm is left inside the facing, and a row 2 mm beside the seam keeps the facing from"
                            + " rolling out."));

    static final HemRule CUT_EDGE_HOLDS = new HemRule(
            "fulled cloth and felt",
            (edge, cloth) -> cloth.holdsItsCutEdge(),
            (edge, cloth) -> once(
                    edge,
                    false,
                    OptionalDouble.empty(),
                    "Felted cloth does not fray: turn it once, " + Words.number(foldCm(edge))
                            + " cm, and fell it down by hand, or leave the edge raw and cut it to length; nothing is"
                            + " neatened."));

    static final HemRule PILE = new HemRule(
            "cloth with a pile",
            (edge, cloth) -> cloth.hasPile(),
            (edge, cloth) -> once(
                    edge,
                    true,
                    OptionalDouble.empty(),
                    "Pile is too thick to fold twice: neaten the edge or sew a tape on it, fold "
                            + Words.number(foldCm(edge))
                            + " cm once and catch it down by hand. Steam it from the back; never press the pile."));

    static final HemRule CUFF =
            new HemRule("sleeve end", (edge, cloth) -> edge.kind().isTubeEnd(), TurnedOnce::cuff);

    static final HemRule BULKY_EDGE = new HemRule(
            "open edge of bulky cloth",
            (edge, cloth) -> edge.kind().isOpenEdge() && cloth.isBulky(),
            (edge, cloth) -> once(
                    edge,
                    true,
                    OptionalDouble.empty(),
                    "Thick cloth folded twice makes a ridge: neaten, fold " + Words.number(foldCm(edge))
                            + " cm once and stitch the edge down, or bind it."));

    private TurnedOnce() {}

    private static String facing(HemEdge.Kind kind) {
        return switch (kind) {
            case SQUARE_NECK -> "An inner corner cannot be folded twice: a facing 4 cm wide";
            case FACED_HEM -> "A wide curve cannot be folded deep: a facing 5 cm wide";
            default -> "A round edge cannot be folded twice: a facing 4 cm wide";
        };
    }

    private static Hem cuff(HemEdge edge, SewnCloth cloth) {
        boolean crisp = cloth.isCrisp();
        return once(
                edge,
                true,
                crisp ? OptionalDouble.of(NEAR_EDGE_MM) : OptionalDouble.empty(),
                "A narrow tube turns badly twice: neaten, fold " + Words.number(foldCm(edge))
                        + " cm once and stitch the edge down, " + Words.number(holdingRowMm(edge)) + " mm from the fold"
                        + (crisp
                                ? "; on crisp cloth a row " + Words.number(NEAR_EDGE_MM) + " mm from the end as well."
                                : "."));
    }

    private static Hem once(HemEdge edge, boolean neatened, OptionalDouble secondRowMm, String because) {
        double spareCm = edge.allowanceCm() - foldCm(edge);
        return new Hem(
                edge.kind().words(),
                edge.lengthCm(),
                edge.allowanceCm(),
                0,
                List.of(foldCm(edge)),
                holdingRowMm(edge),
                secondRowMm,
                neatened,
                spareCm > 0
                        ? because + " Of the " + Words.number(edge.allowanceCm()) + " cm left, "
                                + Words.number(spareCm)
                                + " cm are for the length: try it on, then trim or fold deeper."
                        : because);
    }

    private static double foldCm(HemEdge edge) {
        return Math.min(edge.allowanceCm(), edge.kind() == HemEdge.Kind.BODY ? BODY_CM : CUFF_CM);
    }

    private static double holdingRowMm(HemEdge edge) {
        return 10 * foldCm(edge) - INSIDE_MM;
    }
}
