package campcloth.cloth;

import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;

/**
 * One figure of several cloths, side by side.
 *
 * @param quantity which figure
 * @param values the figure of each cloth, in the order of the cloths; empty where it is neither known nor estimated
 * @param contrast whether they differ in it
 * @param least place of the cloth whose interval lies below all others; empty where none does, or one is not known
 * @param most the same at the upper end
 */
public record ComparedFigure(
        Quantity quantity,
        List<Optional<Figure>> values,
        Contrast contrast,
        Optional<Integer> least,
        Optional<Integer> most) {

    /** What is compared of cloths, with the words for the cloth that stands at either end; no words where that is no merit. */
    public enum Quantity {
        WEIGHT(Property.WEIGHT_GSM, "the lightest", "the heaviest"),
        WIDTH(Property.WIDTH_CM, "", "the widest"),
        THICKNESS(Property.THICKNESS_MM, "the thinnest", "the thickest, and so the warmest in still dry air"),
        AIR_PERMEABILITY(Property.AIR_PERMEABILITY_MM_S, "lets the least wind through", "the airiest"),
        VAPOUR_RESISTANCE(Property.VAPOUR_RESISTANCE_M2PA_W, "lets sweat out most easily", ""),
        SHRINK_WARP(Property.SHRINK_WARP_PERCENT, "shrinks least along", ""),
        SHRINK_WEFT(Property.SHRINK_WEFT_PERCENT, "shrinks least across", ""),
        FIBRE_DIAMETER(Property.FIBRE_DIAMETER_UM, "", ""),
        FIBRE_DIAMETER_CV(Property.FIBRE_DIAMETER_CV_PERCENT, "", ""),
        PRICE_PER_METRE(Property.PRICE_PER_METRE, "the cheapest by the metre", ""),
        PRICE_PER_M2("pricePerM2", "EUR/m2", AreaPrice::asSold, "the cheapest by area", ""),
        PRICE_PER_USABLE_M2(
                "pricePerUsableM2",
                "EUR/m2",
                AreaPrice::usable,
                "the cheapest by the area that can be used once it is washed",
                ""),
        PRICKLE(
                "pricklePercent",
                "% fibres over 30 um",
                completed -> Optional.of(Prickle.of(completed).coarseEndsPercent()),
                "has the fewest prickling fibre ends",
                ""),
        BAST_ROUGHNESS("bastRoughness", "0 smooth to 1 sackcloth", ComparedFigure::bastRoughness, "", "");

        private final String field;
        private final String unit;
        private final Function<Cloth, Optional<Figure>> of;
        private final String leastWords;
        private final String mostWords;

        Quantity(Property property, String leastWords, String mostWords) {
            this(property.field(), property.unit(), completed -> completed.figure(property), leastWords, mostWords);
        }

        Quantity(String field, String unit, Function<Cloth, Optional<Figure>> of, String leastWords, String mostWords) {
            this.field = field;
            this.unit = unit;
            this.of = of;
            this.leastWords = leastWords;
            this.mostWords = mostWords;
        }

        public String field() {
            return field;
        }

        public String unit() {
            return unit;
        }

        /** How much farther apart than their intervals two figures must lie to count as different, half of it each. */
        private double slack(Figure figure) {
            boolean bare = figure.low() == figure.high();
            return switch (this) {
                case PRICE_PER_METRE -> 0;
                case PRICKLE -> FELT_POINTS;
                case SHRINK_WARP, SHRINK_WEFT -> bare ? BARE_POINTS : 0;
                default -> bare ? BARE_SHARE * figure.value() : 0;
            };
        }

        private boolean isBelow(Figure one, Figure other) {
            return one.high() + slack(one) < other.low() - slack(other);
        }
    }

    /** What was told without an interval, whoever told it, is taken to hold within 5 %, so is a price over such a width. */
    private static final double BARE_SHARE = 0.05;

    /** Two cloths that differ by less than twice this share of coarse ends prickle alike: a project choice. */
    private static final double FELT_POINTS = 0.5;

    /** A shrinkage told without an interval is taken to hold within one point of percent. */
    private static final double BARE_POINTS = 1;

    public ComparedFigure {
        values = List.copyOf(values);
    }

    static ComparedFigure of(Quantity quantity, List<Cloth> completed) {
        List<Optional<Figure>> values = completed.stream().map(quantity.of).toList();
        List<Figure> known = values.stream().flatMap(Optional::stream).toList();
        boolean apart = known.stream().anyMatch(a -> known.stream().anyMatch(b -> quantity.isBelow(a, b)));
        Contrast contrast = known.size() < 2 ? Contrast.UNKNOWN : apart ? Contrast.CLEAR : Contrast.WITHIN_ERROR;
        boolean all = known.size() == values.size();
        return new ComparedFigure(
                quantity,
                values,
                contrast,
                all ? beyondAll(known, quantity::isBelow) : Optional.empty(),
                all ? beyondAll(known, (one, other) -> quantity.isBelow(other, one)) : Optional.empty());
    }

    /** The words for a place, where it stands clearly at an end that has words. */
    Optional<String> bestAt(int place) {
        Optional<String> words = least.filter(p -> p == place)
                .map(p -> quantity.leastWords)
                .or(() -> most.filter(p -> p == place).map(p -> quantity.mostWords));
        return words.filter(said -> !said.isEmpty());
    }

    private static Optional<Integer> beyondAll(List<Figure> figures, BiPredicate<Figure, Figure> beyond) {
        for (int i = 0; i < figures.size(); i++) {
            Figure one = figures.get(i);
            boolean first = true;
            for (int j = 0; j < figures.size(); j++) {
                first &= i == j || beyond.test(one, figures.get(j));
            }
            if (first) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /** An index without an interval of its own; 0 where there is no such fibre. */
    private static Optional<Figure> bastRoughness(Cloth completed) {
        double roughness = Prickle.of(completed).bastRoughness();
        double error = roughness == 0 ? 0 : ROUGHNESS_ERROR;
        return Optional.of(new Figure(
                roughness,
                Math.max(0, roughness - error),
                Math.min(1, roughness + error),
                Basis.ESTIMATED,
                Prickle.SOURCE));
    }

    /** Project choice: new or softened linen is that far apart. */
    private static final double ROUGHNESS_ERROR = 0.2;
}
