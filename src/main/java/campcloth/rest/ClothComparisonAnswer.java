package campcloth.rest;

import campcloth.plan.ComparedCloth;
import campcloth.plan.Money;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Cloths ranked by what the same garments cost from them. */
@Schema(
        description =
                "The cheapest first, then those without a price by length, then those that do not take the pieces")
record ClothComparisonAnswer(List<Compared> ranking, List<String> notes) {

    private static final List<String> NOTES = List.of(
            "Each cloth was laid quickly: plan the one that you choose before you buy, its length may come out shorter.",
            "Only price, width and shrinkage are compared here, not whether a cloth does for the event: ask the advice for"
                    + " that, and follow what the event, the venue and the law say about fire.");

    /** One cloth; figures are null where the pieces do not lie on it. */
    @Schema(name = "ComparedCloth")
    record Compared(
            @Schema(description = "place in the request, counted from 0")
            int cloth,

            @Nullable String clothId,
            String name,

            @Schema(description = "whether the pieces lie on it")
            boolean possible,

            @Schema(description = "between the selvedges, as it is cut")
            double usableWidthCm,

            @Nullable Double buyLengthCm,
            @Nullable Double netLengthCm,
            @Nullable Double usedPercent,
            @Nullable Double ruleOfThumbCm,

            @Schema(description = "length by the rule of thumb less the length to buy") @Nullable
            Double savedCm,

            @Nullable Double cost,
            @Nullable String currency,
            List<String> because) {

        static Compared of(ComparedCloth compared, @Nullable String clothId) {
            Optional<ComparedCloth.Purchase> purchase = compared.purchase();
            Optional<Money> cost = purchase.flatMap(ComparedCloth.Purchase::cost);
            return new Compared(
                    compared.place(),
                    clothId,
                    compared.name(),
                    purchase.isPresent(),
                    Rounded.to(compared.cloth().usableWidthCm(), 2),
                    purchase.map(p -> Rounded.to(p.buyLengthCm(), 1)).orElse(null),
                    purchase.map(p -> Rounded.to(p.netLengthCm(), 2)).orElse(null),
                    purchase.map(p -> Rounded.to(p.usedPercent(), 1)).orElse(null),
                    purchase.map(p -> Rounded.to(p.ruleOfThumbCm(), 1)).orElse(null),
                    purchase.map(p -> Rounded.to(p.savedCm(), 1)).orElse(null),
                    cost.map(Money::amount).orElse(null),
                    cost.map(Money::currency).orElse(null),
                    compared.because());
        }
    }

    static ClothComparisonAnswer of(List<ComparedCloth> ranked, ClothComparisonRequest request) {
        List<Compared> ranking = new ArrayList<>();
        for (ComparedCloth compared : ranked) {
            ranking.add(
                    Compared.of(compared, request.cloths().get(compared.place()).clothId()));
        }
        return new ClothComparisonAnswer(ranking, NOTES);
    }
}
