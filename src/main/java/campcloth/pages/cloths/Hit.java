package campcloth.pages.cloths;

import campcloth.cloth.Cloth;
import campcloth.cloth.Completeness;
import campcloth.cloth.Estimates;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.pages.Units;
import java.util.List;
import java.util.stream.Stream;

/**
 * A cloth in a list.
 *
 * @param kept the cloth
 * @param figures weight, width and price as far as somebody told them
 * @param from a word for where it comes from
 * @param fire how it stands at a usual fire
 * @param known figures that were measured, declared or published
 * @param measurable figures that could be
 */
public record Hit(KeptCloth kept, List<String> figures, String from, AtTheFire fire, int known, int measurable) {

    static Hit of(KeptCloth kept, Units units) {
        Cloth cloth = kept.cloth();
        List<String> figures = Stream.of(Property.WEIGHT_GSM, Property.WIDTH_CM, Property.PRICE_PER_METRE)
                .flatMap(property ->
                        cloth.figure(property).stream().map(figure -> Amounts.of(property, figure.value(), units)))
                .toList();
        Completeness.Known known = Completeness.Known.of(cloth);
        return new Hit(
                kept,
                figures,
                From.of(kept),
                AtTheFire.of(Estimates.complete(cloth)),
                known.known(),
                known.measurable());
    }
}
