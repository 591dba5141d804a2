package campcloth.pages.shop;

import campcloth.cloth.Cloth;
import campcloth.cloth.Property;
import campcloth.cloth.UsableWidth;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import campcloth.garment.Sizes;
import campcloth.plan.ClothToCut;
import campcloth.plan.CuttingOrder;
import campcloth.plan.CuttingPlan;
import campcloth.plan.CuttingPlanner;
import campcloth.plan.Money;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** The length to buy of a bale, by a layout that is looked for only as long as nobody waits. */
@Component
class Lengths {

    /** For each of a plan's layouts; the least that a search may be given. */
    private static final double QUICK_SECONDS = 0.01;

    private final CuttingPlanner quick = new CuttingPlanner(QUICK_SECONDS);
    private final Sizes sizes;

    Lengths(Sizes sizes) {
        this.sizes = sizes;
    }

    /** @param completed the cloth with its estimates */
    HowMuch of(ShopForm form, Cloth completed) {
        Figure width = completed.required(Property.WIDTH_CM);
        try {
            CuttingOrder.Line line = form.garment().lines(sizes).get(0);
            CuttingPlan plan = plan(completed, line);
            return new HowMuch(
                    Optional.of(plan),
                    plan.cost().map(money -> new Money(money.amount(), currency(form, money))),
                    width,
                    narrowCm(completed, width, line),
                    List.of());
        } catch (Refused refused) {
            return new HowMuch(
                    Optional.empty(),
                    Optional.empty(),
                    width,
                    Optional.empty(),
                    refused.refusals().stream().map(HowMuch::ofTheGarment).toList());
        }
    }

    private CuttingPlan plan(Cloth completed, CuttingOrder.Line line) {
        return quick.plan(CuttingOrder.of(ClothToCut.of(completed, UsableWidth.USUAL_SELVEDGE_CM, true), line));
    }

    /** Empty too where so narrow a cloth takes no such garment. */
    private Optional<Double> narrowCm(Cloth completed, Figure width, CuttingOrder.Line line) {
        if (width.basis() != Basis.ESTIMATED) {
            return Optional.empty();
        }
        Cloth narrow = completed.with(Property.WIDTH_CM, Figure.exact(width.low(), width.basis(), width.source()));
        try {
            return Optional.of(plan(narrow, line).buyLengthCm());
        } catch (Refused tooNarrow) {
            return Optional.empty();
        }
    }

    private static String currency(ShopForm form, Money money) {
        return form.currency == null ? money.currency() : form.currency;
    }
}
