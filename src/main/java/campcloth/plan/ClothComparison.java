package campcloth.plan;

import campcloth.figure.Refused;
import campcloth.layout.Effort;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The same garments laid on several cloths of different widths and prices: the cheapest first, those without a price after
 * by the length to buy, those on which the pieces do not lie last. Each cloth is laid quickly: a plan for the one chosen may
 * come out shorter, not longer than a step of the shop. Widths count as they are after the wash.
 */
public final class ClothComparison {

    /** Most cloths that are compared at a time. */
    public static final int MOST = 12;

    private static final double SECONDS_FOR_ALL = 1.2;

    private static final Comparator<ComparedCloth> ORDER = Comparator.comparing(
                    (ComparedCloth c) -> c.purchase().isEmpty())
            .thenComparing(c -> c.cost().isEmpty())
            .thenComparing(c -> c.cost().map(Money::amount).orElse(0.0))
            .thenComparing(c -> c.purchase()
                    .map(ComparedCloth.Purchase::buyLengthCm)
                    .orElse(c.cloth().usableWidthCm() * -1))
            .thenComparing(ComparedCloth::place);

    private ClothComparison() {}

    /** The cloths of orders for the same garments, in the order described; refused where prices are of several currencies. */
    public static List<ComparedCloth> ranked(List<CuttingOrder> orders) {
        if (orders.isEmpty() || orders.size() > MOST) {
            throw Refused.of("cloths", "has " + orders.size() + " entries", "give from 1 to " + MOST + " cloths");
        }
        checkCurrency(orders);
        Search search = Search.of(new Effort(SECONDS_FOR_ALL / orders.size(), 1));
        List<ComparedCloth> compared = new ArrayList<>();
        for (int i = 0; i < orders.size(); i++) {
            compared.add(compared(i, orders.get(i), search));
        }
        return ComparisonReasons.told(compared.stream().sorted(ORDER).toList());
    }

    private static void checkCurrency(List<CuttingOrder> orders) {
        List<String> currencies = orders.stream()
                .flatMap(order -> order.cloth().price().stream())
                .map(Money::currency)
                .distinct()
                .toList();
        if (currencies.size() > 1) {
            throw Refused.of(
                    "cloths",
                    "have prices in " + currencies.stream().collect(Collectors.joining(" and ")),
                    "give all prices in one currency; which is cheaper cannot be told otherwise");
        }
    }

    private static ComparedCloth compared(int place, CuttingOrder order, Search search) {
        CutPieces pieces = CutPieces.of(order);
        String name = name(place, order.cloth());
        try {
            TooNarrow.check(order, pieces);
            ComparedCloth.Purchase purchase = purchase(
                    order, pieces, CuttingPlanner.laid(order, pieces, search).chosen());
            return new ComparedCloth(place, name, order.cloth(), Optional.of(purchase), List.of());
        } catch (Refused doesNotLie) {
            List<String> because = doesNotLie.refusals().stream()
                    .map(refusal -> "Not on this cloth: " + refusal.sentence() + ".")
                    .toList();
            return new ComparedCloth(place, name, order.cloth(), Optional.empty(), because);
        }
    }

    private static String name(int place, ClothToCut cloth) {
        return cloth.name().isBlank() ? "cloth " + (place + 1) : cloth.name();
    }

    private static ComparedCloth.Purchase purchase(CuttingOrder order, CutPieces pieces, Lay lay) {
        double usableCm = order.cloth().usableWidthCm();
        double buyCm = order.buyLengthCm(lay.lengthCm());
        return new ComparedCloth.Purchase(
                buyCm,
                lay.lengthCm(),
                Math.min(100, 100 * pieces.areaCm2() / (usableCm * lay.lengthCm())),
                RuleOfThumb.of(order, pieces).roundedCm(),
                pieces.garments().stream()
                        .mapToInt(
                                m -> m.line().count() * m.garment().lengthRule().rows(usableCm))
                        .sum(),
                order.cloth().price().map(price -> price.times(buyCm / 100)));
    }
}
