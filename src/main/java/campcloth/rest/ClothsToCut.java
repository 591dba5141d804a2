package campcloth.rest;

import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.cloth.Estimates;
import campcloth.cloth.Property;
import campcloth.cloth.ToldFigure;
import campcloth.cloth.UsableWidth;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.fibre.Fibres;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import campcloth.plan.ClothToCut;
import campcloth.plan.Money;
import campcloth.rest.CuttingPlanRequest.CutCloth;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** The cloth of a cutting plan: from the catalogue, or as stated, with estimates for what was not stated. */
@Component
class ClothsToCut {

    private static final double USUAL_SELVEDGE_CM = UsableWidth.USUAL_SELVEDGE_CM;
    private static final String USUAL_CURRENCY = "EUR";

    private final Cloths cloths;
    private final Fibres fibres;

    ClothsToCut(Cloths cloths, Fibres fibres) {
        this.cloths = cloths;
        this.fibres = fibres;
    }

    /** The cloth chosen; one of the catalogue that is not there is answered as missing. */
    ClothToCut of(CutClothChoice request) {
        CutCloth stated = request.cloth();
        String id = request.clothId();
        if ((stated == null) == (id == null)) {
            throw Refused.of(
                    "cloth",
                    stated == null ? "is missing" : "stands beside clothId",
                    "give either cloth or clothId; widthCm is the least that is needed");
        }
        if (stated != null && (request.prewash() != null || request.selvedgeCm() != null)) {
            throw Refused.of(
                    request.prewash() == null ? "selvedgeCm" : "prewash",
                    "stands beside cloth",
                    "put it into cloth; here it goes with clothId");
        }
        return stated != null ? Refused.within("cloth", () -> stated(stated)) : kept(String.valueOf(id), request);
    }

    /** The same for one of several, which is refused by its place where it is not there. */
    ClothToCut amongOthers(CutClothChoice choice) {
        String id = choice.clothId();
        if (id != null && cloths.byId(id).isEmpty()) {
            throw Refused.of("clothId", "is not in the catalogue", "take an id from GET /api/cloths");
        }
        return of(choice);
    }

    private ClothToCut kept(String id, CutClothChoice request) {
        return ClothToCut.of(
                cloths.byId(id).orElseThrow(() -> new Missing("cloth", id)).cloth(),
                request.selvedgeCm() == null ? USUAL_SELVEDGE_CM : request.selvedgeCm(),
                request.prewash() == null || request.prewash());
    }

    private ClothToCut stated(CutCloth body) {
        Optional<Blend> blend = Optional.ofNullable(body.blend()).map(shares -> ShareBody.blend(shares, fibres));
        Cloth cloth = Estimates.complete(new Described(
                        body.weave(), body.surface(), body.finish(), body.nap(), body.stretch())
                .cloth(
                        body.name() == null || body.name().isBlank() ? "cloth" : body.name(),
                        blend.orElseGet(() -> Blend.pure(fibres.require(Fibre.UNKNOWN))),
                        figures(body),
                        ""));
        return new ClothToCut(
                body.name() == null ? "" : body.name(),
                cloth.required(Property.WIDTH_CM).value(),
                body.selvedgeCm() == null ? USUAL_SELVEDGE_CM : body.selvedgeCm(),
                cloth.required(Property.SHRINK_WARP_PERCENT),
                cloth.required(Property.SHRINK_WEFT_PERCENT),
                cloth.required(Property.WEIGHT_GSM).value(),
                cloth.figure(Property.THICKNESS_MM).map(Figure::value),
                cloth.surface(),
                Optional.ofNullable(body.weave()),
                Optional.ofNullable(body.finish()),
                blend.map(known -> cloth.mainFibre()),
                cloth.nap(),
                cloth.stretch(),
                body.prewash() == null || body.prewash(),
                price(body));
    }

    private static Optional<Money> price(CutCloth body) {
        return Optional.ofNullable(body.pricePerMetre())
                .map(amount -> new Money(amount, body.currency() == null ? USUAL_CURRENCY : body.currency()));
    }

    private static Map<Property, Figure> figures(CutCloth body) {
        Map<Property, Figure> figures = new EnumMap<>(Property.class);
        put(figures, Property.WIDTH_CM, body.widthCm());
        put(figures, Property.WEIGHT_GSM, body.weightGsm());
        put(figures, Property.THICKNESS_MM, body.thicknessMm());
        put(figures, Property.SHRINK_WARP_PERCENT, body.shrinkWarpPercent());
        put(figures, Property.SHRINK_WEFT_PERCENT, body.shrinkWeftPercent());
        return figures;
    }

    private static void put(Map<Property, Figure> figures, Property property, @Nullable Double value) {
        if (value != null) {
            property.range().check(value);
            figures.put(property, ToldFigure.declared(value));
        }
    }
}
