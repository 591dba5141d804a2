package campcloth.cloth;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.Comparator;

/**
 * How thick the single fibres of a cloth are, micrometre, and how much that varies.
 *
 * <p>The diameter comes from the table of fibres; for fibres without one, from the kind of fibre. The coefficient of
 * variation, percent, comes from the kind of fibre (wool tops 18 to 28, bast bundles 30 to 60, spun synthetics 5 to 12).
 * Both are from memory of the textile literature, so the intervals are wide. A long synthetic pile mixes fine under hair
 * with guard hair of 30 to 70 um and is taken apart from the same fibre in other cloth.
 *
 * <p>The figure of a whole cloth ({@link Property#FIBRE_DIAMETER_UM}) speaks of one fibre of the blend, the
 * {@link #leading} one: the greatest share of hair, without hair the greatest share at all.
 */
final class Fineness {

    static final String SOURCE = "estimate-fibre-fineness";

    /** What is usual for a fibre is never known closer than this factor each way. */
    private static final double LEAST_ERROR = 1.2;

    private static final Span LONG_PILE_UM = new Span(15, 35, 70);

    private Fineness() {}

    /** The fibre of the blend that the cloth's diameter speaks of. */
    static Fibre leading(Blend blend) {
        return blend.shares().stream()
                .map(Blend.Share::fibre)
                .filter(fibre -> FibreKind.of(fibre) == FibreKind.HAIR)
                .findFirst()
                .orElseGet(() -> blend.shares().stream()
                        .max(Comparator.comparingDouble(Blend.Share::percent))
                        .orElseThrow()
                        .fibre());
    }

    /** Mean diameter of a fibre in this cloth: the cloth's own figure where it speaks of this fibre. */
    static Figure diameterUm(Cloth cloth, Fibre fibre) {
        if (fibre.equals(leading(cloth.blend()))) {
            return cloth.figure(Property.FIBRE_DIAMETER_UM).orElseGet(() -> usualDiameterUm(fibre, cloth.weave()));
        }
        return usualDiameterUm(fibre, cloth.weave());
    }

    /** Coefficient of variation of the diameter in this cloth, percent. */
    static Figure variationPercent(Cloth cloth, Fibre fibre) {
        if (fibre.equals(leading(cloth.blend()))) {
            return cloth.figure(Property.FIBRE_DIAMETER_CV_PERCENT)
                    .orElseGet(() -> usualVariationPercent(fibre, cloth.weave()));
        }
        return usualVariationPercent(fibre, cloth.weave());
    }

    static Figure usualDiameterUm(Fibre fibre, Weave weave) {
        Span usual = longPile(fibre, weave)
                ? LONG_PILE_UM
                : fibre.diameterUm()
                        .map(figure -> Span.of(figure).atLeastAsWideAs(LEAST_ERROR))
                        .orElseGet(() -> diameterOfKindUm(FibreKind.of(fibre)));
        return usual.asEstimate(Property.FIBRE_DIAMETER_UM, SOURCE);
    }

    static Figure usualVariationPercent(Fibre fibre, Weave weave) {
        Span usual = longPile(fibre, weave) ? new Span(10, 30, 60) : variationOfKindPercent(fibre);
        return new Figure(usual.mid(), usual.low(), usual.high(), Basis.ESTIMATED, SOURCE);
    }

    private static boolean longPile(Fibre fibre, Weave weave) {
        return weave == Weave.FUR && FibreKind.of(fibre) == FibreKind.SYNTHETIC;
    }

    private static Span diameterOfKindUm(FibreKind kind) {
        return switch (kind) {
            case COTTON -> new Span(11, 14.5, 20);
            case BAST -> new Span(12, 18, 40);
            case REGENERATED -> new Span(9, 13, 20);
            case SILK -> new Span(10, 12, 16);
            case HAIR -> new Span(16, 26, 38);
            case ACETATE, SYNTHETIC -> new Span(9, 14, 22);
            case ELASTIC -> new Span(20, 50, 110);
            case MINERAL -> new Span(5, 9, 14);
            case UNNAMED -> new Span(9, 18, 45);
        };
    }

    private static Span variationOfKindPercent(Fibre fibre) {
        return switch (FibreKind.of(fibre)) {
            case COTTON -> new Span(10, 20, 30);
            case BAST -> new Span(30, 40, 60);
            case REGENERATED, ACETATE, SYNTHETIC, ELASTIC, MINERAL -> new Span(4, 8, 12);
            case SILK -> new Span(5, 12, 20);
            case HAIR -> variationOfHairPercent(fibre.key());
            case UNNAMED -> new Span(5, 24, 45);
        };
    }

    private static Span variationOfHairPercent(String key) {
        return switch (key) {
            case "wool" -> new Span(18, 23, 30);
            case "cashmere" -> new Span(17, 20, 24);
            case "alpaca", "mohair", "llama", "camel" -> new Span(20, 25, 32);
            case "angora" -> new Span(24, 32, 42);
            default -> new Span(18, 25, 45);
        };
    }
}
