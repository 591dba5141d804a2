package campcloth.pages.shop;

import campcloth.cloth.Property;
import campcloth.figure.Figure;
import campcloth.figure.Refusal;
import campcloth.pages.ForMakers;
import campcloth.plan.CuttingPlan;
import campcloth.plan.Money;
import java.util.List;
import java.util.Optional;

/**
 * What to buy of a bale, or why that cannot be told.
 *
 * @param plan the plan of a quick layout; empty where it was refused
 * @param cost in the shop's currency, where a price was told
 * @param width from selvedge to selvedge that it was reckoned for
 * @param narrowCm what to buy should the bale be as narrow as its estimate allows; empty where its width was told
 * @param refusals why there is no plan, with what would help
 */
public record HowMuch(
        Optional<CuttingPlan> plan,
        Optional<Money> cost,
        Figure width,
        Optional<Double> narrowCm,
        List<Refusal> refusals) {

    private static final String IN_ORDER = "garments[0].";

    /** Whether its width was told and leaves no room for a piece. */
    public boolean isTooNarrow() {
        return refusals.stream().anyMatch(refusal -> refusal.field().endsWith(Property.WIDTH_CM.field()));
    }

    /** What else is to know of the plan. */
    public List<String> notes() {
        return plan.map(known -> ForMakers.words(known.notes())).orElse(List.of());
    }

    static Refusal ofTheGarment(Refusal refusal) {
        return refusal.field().startsWith(IN_ORDER)
                ? new Refusal(
                        refusal.field().substring(IN_ORDER.length()),
                        ForMakers.words(refusal.because()),
                        ForMakers.words(refusal.remedy()))
                : refusal;
    }
}
