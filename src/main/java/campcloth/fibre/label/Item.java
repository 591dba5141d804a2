package campcloth.fibre.label;

import campcloth.fibre.Fibre;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A number or a fibre name, with the signs between it and the item before.
 *
 * @param from first character
 * @param to character after the last
 * @param percent the number, or empty for a name
 * @param fibres one for a name, two for a pair, none for a number
 * @param word the name as the vocabulary writes it; empty for a number
 * @param kind kind of the name; empty for a number
 * @param languages languages of the name; none for a number, or a name of all languages
 * @param signs signs and joining words since the item before
 */
record Item(
        int from,
        int to,
        Optional<BigDecimal> percent,
        List<Fibre> fibres,
        String word,
        Optional<WordKind> kind,
        Set<String> languages,
        String signs) {

    /** Sign under which a word that joins two names of one fibre is kept. */
    static final String OR = "|";

    /** Signs by how far they set items apart: the later the string, the farther. */
    private static final List<String> SET_APART = List.of(":-()" + OR, "/+&", ",\n", ";.*");

    static Item amount(Piece.Amount amount, String signs) {
        return new Item(
                amount.from(),
                amount.to(),
                Optional.of(amount.percent()),
                List.of(),
                "",
                Optional.empty(),
                Set.of(),
                signs);
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
                entry.languages(),
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

    /**
     * Whether this is another name of the same fibre, given beside the first one: with a stroke, in brackets or after an "or";
     * or however it is set, where the names are of different languages.
     */
    boolean isSynonymOf(Item before) {
        if (isAmount() || before.isAmount() || !fibres.equals(before.fibres)) {
            return false;
        }
        boolean beside = !signs.isEmpty() && signs.chars().allMatch(sign -> ("/(" + OR).indexOf(sign) >= 0);
        if (beside && (signs.contains(OR) || !word.equals(before.word) || languages.size() > 1)) {
            return true;
        }
        return !languages.isEmpty()
                && !before.languages.isEmpty()
                && languages.stream().noneMatch(before.languages::contains)
                && signs.chars().allMatch(sign -> "/(|-,\n".indexOf(sign) >= 0);
    }

    /** The item before with this name as part of it. */
    Item mergedInto(Item before) {
        return new Item(
                before.from,
                to,
                before.percent,
                before.fibres,
                before.word,
                before.kind,
                before.languages,
                before.signs);
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
