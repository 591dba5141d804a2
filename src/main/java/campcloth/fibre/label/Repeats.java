package campcloth.fibre.label;

import campcloth.fibre.Blend;
import campcloth.figure.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A composition that stands once a language, one after the other: {@code 100% Baumwolle / 100% cotton / 100% coton}. It is
 * taken for one where it cannot be read otherwise, splits into whole compositions, and all of them are the same.
 */
final class Repeats {

    private static final String BORDERS = "\n;./-*,";
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /** What is noted where a composition was found more than once. */
    static final String NOTE = "the composition stands more than once, each time the same, and was read once";

    private Repeats() {}

    /** The composition of a section. */
    static Blend blend(Section section, Set<String> notes) {
        try {
            return once(section, notes);
        } catch (Unreadable asOne) {
            if (asOne.isAboutReadings()) {
                throw asOne;
            }
            for (List<Section> repeats : splits(section)) {
                List<Blend> blends = blends(repeats, notes);
                if (blends.size() > 1) {
                    refuseContradiction(repeats, blends, asOne);
                    notes.add(NOTE);
                    return blends.get(0);
                }
            }
            throw asOne;
        }
    }

    private static Blend once(Section section, Set<String> notes) {
        Items items = Items.of(section, notes);
        return Composition.of(section, items.inOrder(), Shares.of(items), notes);
    }

    /** What each repeat says; nothing where one of them is no whole composition. */
    private static List<Blend> blends(List<Section> repeats, Set<String> notes) {
        Set<String> further = new LinkedHashSet<>();
        List<Blend> blends = new ArrayList<>();
        try {
            for (Section repeat : repeats) {
                blends.add(once(repeat, further));
            }
        } catch (Unreadable notWhole) {
            return List.of();
        }
        notes.addAll(further);
        return blends;
    }

    private static void refuseContradiction(List<Section> repeats, List<Blend> blends, Unreadable asOne) {
        for (int i = 1; i < blends.size(); i++) {
            if (!Reading.same(blends.get(0), blends.get(i))) {
                throw isSetApart(repeats.get(i))
                        ? contradiction(repeats.get(i), blends.get(0), blends.get(i), blends.size())
                        : asOne;
            }
        }
    }

    /** Whether a sign stands before it that parts compositions; a comma or nothing might as well part fibres. */
    private static boolean isSetApart(Section repeat) {
        return repeat.content().get(0) instanceof Piece.Sign sign
                && !sign.text().equals(",");
    }

    /** The ways to cut a section that give two compositions or more. */
    private static List<List<Section>> splits(Section section) {
        List<List<Section>> splits = new ArrayList<>();
        for (int border = 0; border < BORDERS.length(); border++) {
            add(splits, cut(section, BORDERS.substring(border, border + 1)));
        }
        add(splits, cutWhereWhole(section));
        return splits;
    }

    private static void add(List<List<Section>> splits, List<Section> split) {
        if (split.size() > 1) {
            splits.add(split);
        }
    }

    /** At every such sign and before every heading; what says nothing goes with what follows. */
    private static List<Section> cut(Section section, String sign) {
        List<Section> cut = new ArrayList<>();
        List<Piece> content = new ArrayList<>();
        for (Piece piece : section.content()) {
            boolean border = piece.is(WordKind.HEADING)
                    || (piece instanceof Piece.Sign s && s.text().equals(sign));
            if (border && Section.saysSomething(content)) {
                cut.add(section.with(content));
                content = new ArrayList<>();
            }
            content.add(piece);
        }
        return closed(section, cut, content);
    }

    /** Where numbers that stand in turns with names have come to 100. */
    private static List<Section> cutWhereWhole(Section section) {
        List<Section> cut = new ArrayList<>();
        List<Piece> content = new ArrayList<>();
        BigDecimal sum = BigDecimal.ZERO;
        boolean numberFirst = section.content().stream()
                .filter(p -> p instanceof Piece.Amount || Section.names(p))
                .findFirst()
                .filter(p -> p instanceof Piece.Amount)
                .isPresent();
        for (Piece piece : section.content()) {
            boolean opens = numberFirst ? piece instanceof Piece.Amount : Section.names(piece);
            if (opens && sum.compareTo(HUNDRED) == 0) {
                cut.add(section.with(content));
                content = new ArrayList<>();
                sum = BigDecimal.ZERO;
            }
            if (piece instanceof Piece.Amount amount) {
                sum = sum.add(amount.percent());
            }
            content.add(piece);
        }
        return closed(section, cut, content);
    }

    private static List<Section> closed(Section section, List<Section> cut, List<Piece> rest) {
        if (Section.saysSomething(rest) || cut.isEmpty()) {
            cut.add(section.with(rest));
        } else {
            Section last = cut.remove(cut.size() - 1);
            List<Piece> content = new ArrayList<>(last.content());
            content.addAll(rest);
            cut.add(section.with(content));
        }
        return cut;
    }

    private static Unreadable contradiction(Section repeat, Blend first, Blend second, int times) {
        return new Unreadable(
                repeat.from(),
                repeat.to(),
                "this composition contradicts the one before it, and together the shares sum to "
                        + Words.number(100.0 * times) + " %, not 100 %",
                "where these are several parts, name each, such as shell: ... lining: ...; else write the one that holds",
                List.of(first.words(), second.words()));
    }
}
