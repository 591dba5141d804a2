package campcloth.fibre.label;

import campcloth.fibre.Fibre;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A number or a fibre name, with the signs between it and the item before.
 *
 * @param from first character
 * @param to character after the last
 * @param percent the number, or empty for a name
 * @param fibres one for a name, two for a pair, none for a number
 * @param word the name as the vocabulary writes it; empty for a number
 * @param kind kind of the name; empty for a number
 * @param signs signs and joining words since the item before
 */
record Item(
        int from,
        int to,
        Optional<BigDecimal> percent,
        List<Fibre> fibres,
        String word,
        Optional<WordKind> kind,
        String signs) {

    /** Sign under which a word that joins two names of one fibre is kept. */
    static final String OR = "|";

    /** Signs by how far they set items apart: the later the string, the farther. */
    private static final List<String> SET_APART = List.of(":-()" + OR, "/+&", ",\n", ";.*");

    static Item amount(Piece.Amount amount, String signs) {
        return new Item(
                amount.from(), amount.to(), Optional.of(amount.percent()), List.of(), "", Optional.empty(), signs);
    }

    static Item name(Piece.Known known, String signs) {
        Entry entry = known.entry();
        return new Item(
                known.from(),
                known.to(),
                Optional.empty(),
                entry.fibres(),
                entry.word(),
                Optional.of(entry.kind()),
                signs);
    }

    boolean isAmount() {
        return percent.isPresent();
    }

    boolean isPair() {
        return fibres.size() == 2;
    }

    Fibre fibre() {
        return fibres.get(0);
    }

    /** Whether this is another name of the same fibre, given beside the first one. */
    boolean isSynonymOf(Item before) {
        return !isAmount()
                && !before.isAmount()
                && fibres.equals(before.fibres)
                && !signs.isEmpty()
                && signs.chars().allMatch(sign -> ("/(" + OR).indexOf(sign) >= 0)
                && (signs.contains(OR) || !word.equals(before.word));
    }

    /** The item before with this name as part of it. */
    Item mergedInto(Item before) {
        return new Item(before.from, to, before.percent, before.fibres, before.word, before.kind, before.signs);
    }

    /** How far the signs set this item apart from the one before, 0 for not at all. */
    int gap() {
        int gap = 0;
        for (int i = 0; i < signs.length(); i++) {
            for (int apart = 0; apart < SET_APART.size(); apart++) {
                if (SET_APART.get(apart).indexOf(signs.charAt(i)) >= 0) {
                    gap = Math.max(gap, apart);
                }
            }
        }
        return gap;
    }
}
