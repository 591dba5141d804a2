package campcloth.fibre.label;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.figure.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Adds the shares of one composition up. They must make 100 percent exactly; three shares or more may miss it by what their
 * rounding explains, at most half a percent, and are then scaled (project choice). Degenerate cases: a fibre that stands twice
 * is added up; shares out of order (Regulation (EU) No 1007/2011, Article 9, wants them descending) are kept and noted.
 */
final class Composition {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final BigDecimal MOST_ROUNDING = new BigDecimal("0.5");

    private final Section section;
    private final List<Share> shares;
    private final Set<String> notes;

    private Composition(Section section, List<Share> shares, Set<String> notes) {
        this.section = section;
        this.shares = shares;
        this.notes = notes;
    }

    static Blend of(Section section, List<Item> items, List<Share> shares, Set<String> notes) {
        Composition composition = new Composition(section, shares, notes);
        BigDecimal sum = shares.stream().map(Share::percent).reduce(BigDecimal.ZERO, BigDecimal::add);
        composition.refuseUnlessWhole(sum, items);
        composition.noteOrder();
        return composition.blend(sum);
    }

    private void refuseUnlessWhole(BigDecimal sum, List<Item> items) {
        BigDecimal miss = sum.subtract(HUNDRED).abs();
        if (miss.signum() == 0) {
            return;
        }
        BigDecimal rounding = shares.stream()
                .map(s -> new BigDecimal("0.5").movePointLeft(s.percent().scale()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        if (shares.size() < 3 || miss.compareTo(MOST_ROUNDING) > 0 || miss.compareTo(rounding) > 0) {
            throw new Unreadable(
                    items.get(0).from(),
                    items.get(items.size() - 1).to(),
                    "the shares sum to " + Words.number(sum.doubleValue()) + " %, not 100 %",
                    sum.compareTo(HUNDRED) > 0
                            ? "check the numbers; where these are several parts, name each, such as shell: ... lining: ..."
                            : "check the numbers, and add what is missing, as 'other fibres' where the label does not name it");
        }
        notes.add("the rounded shares sum to " + Words.number(sum.doubleValue()) + " % and were scaled to 100 %");
    }

    private void noteOrder() {
        List<BigDecimal> named = shares.stream()
                .filter(s ->
                        !s.fibre().key().equals(Fibre.OTHER) && !s.fibre().key().equals(Fibre.UNKNOWN))
                .map(Share::percent)
                .toList();
        for (int i = 1; i < named.size(); i++) {
            if (named.get(i).compareTo(named.get(i - 1)) > 0) {
                notes.add("the shares do not stand in descending order, as they should (Regulation (EU) No 1007/2011,"
                        + " Article 9): check that each number stands with its fibre");
                return;
            }
        }
    }

    private Blend blend(BigDecimal sum) {
        Map<Fibre, BigDecimal> percentOf = new LinkedHashMap<>();
        for (Share share : shares) {
            if (percentOf.containsKey(share.fibre())) {
                notes.add(share.fibre().name() + " stands twice in '"
                        + section.parts().get(0).part() + "'; its shares were added up");
            }
            percentOf.merge(share.fibre(), share.percent(), BigDecimal::add);
        }
        List<Blend.Share> blend = new ArrayList<>();
        percentOf.forEach(
                (fibre, percent) -> blend.add(new Blend.Share(fibre, percent.doubleValue() * 100 / sum.doubleValue())));
        return new Blend(blend);
    }
}
