package campcloth.fibre.label;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Looks the tokens up: longest phrase first, whole words only, and a word that is not known refuses the label. */
final class Pieces {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private final String text;
    private final List<Token> tokens;
    private final Lexicon lexicon;
    private final List<Piece> pieces = new ArrayList<>();

    private Pieces(String text, Lexicon lexicon) {
        this.text = text;
        this.tokens = Tokens.of(text);
        this.lexicon = lexicon;
    }

    static List<Piece> of(String text, Lexicon lexicon) {
        Pieces pieces = new Pieces(text, lexicon);
        int at = 0;
        while (at < pieces.tokens.size()) {
            at = pieces.next(at);
        }
        return List.copyOf(pieces.pieces);
    }

    private int next(int at) {
        Token token = tokens.get(at);
        return switch (token.sort()) {
            case WORD -> word(at);
            case NUMBER -> amount(at);
            case SIGN -> sign(token, at);
        };
    }

    private int word(int at) {
        Lexicon.Match match = lexicon.longest(tokens, at).orElseThrow(() -> unknown(tokens.get(at)));
        Token last = tokens.get(match.next() - 1);
        Entry entry = match.entries().get(0);
        Piece.Known known = new Piece.Known(tokens.get(at).from(), last.to(), entry);
        if (match.entries().size() > 1) {
            throw manyReadings(known, match.entries());
        }
        if (entry.kind().isRefused()) {
            throw refused(known);
        }
        if (known.is(WordKind.PERCENT)) {
            throw strayPercent(known.from(), known.to());
        }
        pieces.add(known);
        return match.next();
    }

    private int amount(int at) {
        Token token = tokens.get(at);
        BigDecimal percent = new BigDecimal(token.text());
        int next = pastPercent(at + 1);
        int to = tokens.get(next - 1).to();
        if (percent.signum() <= 0 || percent.compareTo(HUNDRED) > 0) {
            throw new Unreadable(
                    token.from(),
                    to,
                    "a share of " + token.text() + " % cannot be",
                    "give a share above 0 and at most 100 percent");
        }
        pieces.add(new Piece.Amount(token.from(), to, percent));
        return next;
    }

    private int pastPercent(int at) {
        if (at < tokens.size() && tokens.get(at).isSign("%")) {
            return at + 1;
        }
        if (at < tokens.size() && tokens.get(at).isWord()) {
            return lexicon.longest(tokens, at)
                    .filter(m -> m.mayBe(WordKind.PERCENT))
                    .map(Lexicon.Match::next)
                    .orElse(at);
        }
        return at;
    }

    private int sign(Token token, int at) {
        if (token.isSign("%")) {
            throw strayPercent(token.from(), token.to());
        }
        pieces.add(new Piece.Sign(token.from(), token.to(), token.text()));
        return at + 1;
    }

    private static Unreadable strayPercent(int from, int to) {
        return new Unreadable(from, to, "no number stands before this percent sign", "write the number before it");
    }

    private Unreadable unknown(Token token) {
        return new Unreadable(
                token.from(),
                token.to(),
                "'" + Shown.excerpt(text, token.from(), token.to()) + "' is not a word known from fibre-content labels",
                "check the spelling, write the generic fibre name, or leave out what is not about fibre content");
    }

    private Unreadable manyReadings(Piece.Known known, List<Entry> entries) {
        List<String> readings = entries.stream().map(Entry::reading).toList();
        return new Unreadable(
                known.from(),
                known.to(),
                "'" + Shown.excerpt(text, known.from(), known.to()) + "' has more than one reading: "
                        + String.join("; ", readings),
                "write it in one language, or the fibre's generic English name",
                readings);
    }

    private Unreadable refused(Piece.Known known) {
        Entry entry = known.entry();
        String written = Shown.excerpt(text, known.from(), known.to());
        if (entry.kind() == WordKind.AMBIGUOUS) {
            return new Unreadable(
                    known.from(),
                    known.to(),
                    "'" + written + "' has more than one reading: " + entry.note(),
                    "write the fibre's generic name: " + String.join(", or ", entry.means()),
                    entry.means());
        }
        return new Unreadable(
                known.from(),
                known.to(),
                "'" + written + "' does not say which fibre it is: " + entry.note(),
                "write each fibre's generic name with its share");
    }
}
