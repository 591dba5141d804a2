package campcloth.fibre.label;

import java.util.List;

/**
 * The composition of one or more parts of the garment, still in pieces.
 *
 * @param parts names of the parts that share it
 * @param from first character of its heading or, without one, of its content
 * @param to character after its last
 * @param content the pieces after the heading
 */
record Section(List<Name> parts, int from, int to, List<Piece> content) {

    /** The name of a part, and where it stands. */
    record Name(String part, int from, int to) {}

    /** A stretch of this section, under the same names. */
    Section with(List<Piece> stretch) {
        return new Section(
                parts, stretch.get(0).from(), stretch.get(stretch.size() - 1).to(), List.copyOf(stretch));
    }

    /** Whether anything here names a fibre or a share. */
    static boolean saysSomething(List<Piece> pieces) {
        return pieces.stream().anyMatch(p -> p instanceof Piece.Amount || p.is(WordKind.PURE) || names(p));
    }

    static boolean names(Piece piece) {
        return piece instanceof Piece.Known known && (known.entry().kind().namesOneFibre() || known.is(WordKind.PAIR));
    }
}
