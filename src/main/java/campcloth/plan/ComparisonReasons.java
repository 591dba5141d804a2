package campcloth.plan;

import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Why the cloths of a comparison stand in their order, in words. */
final class ComparisonReasons {

    private ComparisonReasons() {}

    /** The same cloths, each with its reasons; those on which nothing lies keep theirs. */
    static List<ComparedCloth> told(List<ComparedCloth> ranked) {
        ComparedCloth first = ranked.get(0);
        return ranked.stream()
                .map(c -> c.purchase().isEmpty() ? c : c.because(c == first ? ofFirst(ranked) : behind(c, first)))
                .toList();
    }

    private static List<String> ofFirst(List<ComparedCloth> ranked) {
        ComparedCloth first = ranked.get(0);
        List<String> because = new ArrayList<>();
        if (first.cost().isEmpty()) {
            because.add("No price is known: the shortest length to buy stands first, which need not be the cheapest.");
            return because;
        }
        because.add("The least to pay: " + paid(first) + ".");
        dearestByTheMetre(ranked, first).ifPresent(other -> because.add(dearerButCheaper(first, other)));
        shortest(ranked)
                .filter(other -> bought(other) < bought(first))
                .ifPresent(other -> because.add("The cheapest is not the shortest: " + other.name() + " takes "
                        + Words.number(bought(first) - bought(other)) + " cm less and costs "
                        + Words.fixed(more(other, first), 2) + " " + currency(first) + " more."));
        return because;
    }

    private static List<String> behind(ComparedCloth cloth, ComparedCloth first) {
        List<String> because = new ArrayList<>();
        if (cloth.cost().isEmpty()) {
            because.add("Its price is not known; it takes " + Words.number(bought(cloth)) + " cm"
                    + first.cost()
                            .map(cost -> ": cheaper than " + first.name() + " below "
                                    + Words.fixed(Math.floor(100 * cost.amount() / (bought(cloth) / 100)) / 100, 2)
                                    + " " + cost.currency() + " a metre")
                            .orElse("")
                    + ".");
            return because;
        }
        because.add(Words.fixed(more(cloth, first), 2) + " " + currency(first) + " more than " + first.name() + ": "
                + paid(cloth) + ".");
        if (rows(cloth) > rows(first)) {
            because.add("On " + width(cloth) + " cm the body panels need " + rowsWords(cloth) + ", on " + width(first)
                    + " cm " + rowsWords(first) + ".");
        }
        return because;
    }

    /** A cloth that costs less a metre and is narrower, and yet more in all. */
    private static Optional<ComparedCloth> dearestByTheMetre(List<ComparedCloth> ranked, ComparedCloth first) {
        return ranked.stream()
                .filter(c -> c.cost().isPresent() && perMetre(c) < perMetre(first) && more(c, first) > 0)
                .filter(c -> c.cloth().usableWidthCm() < first.cloth().usableWidthCm())
                .min(Comparator.comparingDouble(ComparisonReasons::perMetre));
    }

    private static String dearerButCheaper(ComparedCloth first, ComparedCloth other) {
        String metre = "It costs more a metre than " + other.name() + ", but is wider (" + width(first) + " cm to "
                + width(other) + " as cut)";
        return rows(first) < rows(other)
                ? metre + ": the body panels need " + rowsWords(first) + " rather than " + rowsWords(other) + "."
                : metre + ", so that " + Words.number(bought(other) - bought(first)) + " cm less are bought.";
    }

    private static Optional<ComparedCloth> shortest(List<ComparedCloth> ranked) {
        return ranked.stream()
                .filter(c -> c.cost().isPresent())
                .min(Comparator.comparingDouble(ComparisonReasons::bought));
    }

    private static String paid(ComparedCloth cloth) {
        return Words.fixed(cloth.cost().orElseThrow().amount(), 2) + " " + currency(cloth) + " for "
                + Words.number(bought(cloth)) + " cm";
    }

    private static double more(ComparedCloth cloth, ComparedCloth than) {
        return cloth.cost().orElseThrow().amount() - than.cost().orElseThrow().amount();
    }

    private static double bought(ComparedCloth cloth) {
        return cloth.purchase().orElseThrow().buyLengthCm();
    }

    private static int rows(ComparedCloth cloth) {
        return cloth.purchase().orElseThrow().rows();
    }

    private static String rowsWords(ComparedCloth cloth) {
        return rows(cloth) == 1 ? "1 row" : rows(cloth) + " rows";
    }

    private static double perMetre(ComparedCloth cloth) {
        return cloth.cloth().price().orElseThrow().amount();
    }

    private static String currency(ComparedCloth cloth) {
        return cloth.cost().orElseThrow().currency();
    }

    private static String width(ComparedCloth cloth) {
        return Words.fixed(cloth.cloth().usableWidthCm(), 1);
    }
}
