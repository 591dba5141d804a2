package campcloth.fibre.label;

import java.util.List;

/**
 * A number, a sign, or a word or phrase of the label with all that it may mean.
 *
 * @param sort what it is
 * @param from first character in the text
 * @param to character after the last
 * @param text number or sign as the token has it; a word or phrase in its folded form
 * @param senses what a word may mean; none for a word that is not known, and for numbers and signs
 */
record Spot(Token.Sort sort, int from, int to, String text, List<Entry> senses) {

    Spot {
        senses = List.copyOf(senses);
    }

    static Spot of(Token token) {
        return new Spot(token.sort(), token.from(), token.to(), token.text(), List.of());
    }

    boolean isWord() {
        return sort == Token.Sort.WORD;
    }

    boolean isSign(String signs) {
        return sort == Token.Sort.SIGN && signs.contains(text);
    }

    boolean mayBe(WordKind kind) {
        return senses.stream().anyMatch(s -> s.kind() == kind);
    }

    boolean isOnly(WordKind kind) {
        return !senses.isEmpty() && senses.stream().allMatch(s -> s.kind() == kind);
    }

    /** Whether any language takes it for something else than another does. */
    boolean isOpen() {
        return senses.size() > 1;
    }

    Spot meaning(List<Entry> left) {
        return new Spot(sort, from, to, text, left);
    }
}
