package campcloth.cloth;

import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.Optional;

/** What a square metre of a cloth costs, EUR/m2. Empty where nobody said a price: nothing about a cloth tells it. */
final class AreaPrice {

    private static final String AS_SOLD = "computed from pricePerMetre and widthCm";
    private static final String USABLE =
            "computed from pricePerMetre, widthCm less two selvedges of 1 cm, and shrinkage";

    private AreaPrice() {}

    /** Selvedges included, as it lies in the shop. */
    static Optional<Figure> asSold(Cloth completed) {
        Span widthM = Span.of(completed.required(Property.WIDTH_CM)).times(0.01);
        return completed
                .figure(Property.PRICE_PER_METRE)
                .map(price -> over(price, widthM, weakest(completed, price, Property.WIDTH_CM), AS_SOLD));
    }

    /** Between the selvedges and washed: what garments are cut from. */
    static Optional<Figure> usable(Cloth completed) {
        Span areaM2 = UsableWidth.washedCm(completed).times(0.01).times(UsableWidth.lengthLeft(completed));
        return completed
                .figure(Property.PRICE_PER_METRE)
                .map(price -> over(
                        price,
                        areaM2,
                        weakest(
                                completed,
                                price,
                                Property.WIDTH_CM,
                                Property.SHRINK_WARP_PERCENT,
                                Property.SHRINK_WEFT_PERCENT),
                        USABLE));
    }

    /** Ends over ends: the widest that the intervals allow. */
    private static Figure over(Figure price, Span areaM2, Basis basis, String source) {
        return new Figure(
                price.value() / areaM2.mid(), price.low() / areaM2.high(), price.high() / areaM2.low(), basis, source);
    }

    private static Basis weakest(Cloth completed, Figure price, Property... others) {
        Basis weakest = price.basis();
        for (Property property : others) {
            Basis basis = completed.required(property).basis();
            weakest = weakest.beats(basis) ? basis : weakest;
        }
        return weakest;
    }
}
