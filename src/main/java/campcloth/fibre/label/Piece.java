package campcloth.fibre.label;

import java.math.BigDecimal;

/** A piece of a label whose meaning is known by itself: a number, a word of the vocabulary, or a sign. */
sealed interface Piece {

    int from();

    int to();

    /** A share, with or without its percent sign. */
    record Amount(int from, int to, BigDecimal percent) implements Piece {}

    /** A word or phrase of the vocabulary. */
    record Known(int from, int to, Entry entry) implements Piece {

        @Override
        public boolean is(WordKind kind) {
            return entry.kind() == kind;
        }
    }

    /** Punctuation. */
    record Sign(int from, int to, String text) implements Piece {}

    /** Whether this is a word of that kind. */
    default boolean is(WordKind kind) {
        return false;
    }
}
