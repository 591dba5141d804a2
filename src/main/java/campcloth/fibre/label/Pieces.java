package campcloth.fibre.label;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Spots of one meaning each to pieces; a word that is not known, or known to be unclear, refuses the label. */
final class Pieces {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int LONGEST_SHORT_PERCENT = 4;

    private final String text;
    private final List<Spot> spots;
    private final List<Piece> pieces = new ArrayList<>();

    private Pieces(String text, List<Spot> spots) {
        this.text = text;
        this.spots = spots;
    }

    static List<Piece> of(String text, List<Spot> spots) {
        Pieces pieces = new Pieces(text, spots);
        int at = 0;
        while (at < spots.size()) {
            at = pieces.next(at);
        }
        return List.copyOf(pieces.pieces);
    }

    private int next(int at) {
        Spot spot = spots.get(at);
        if (spot.sort() == Token.Sort.NUMBER) {
            return amount(at);
        }
        if (spot.isWord()) {
            word(spot);
        } else if (spot.isSign("%")) {
            throw strayPercent(spot);
        } else if (!endsAbbreviation(at)) {
            pieces.add(new Piece.Sign(spot.from(), spot.to(), spot.text()));
        }
        return at + 1;
    }

    private void word(Spot spot) {
        if (spot.senses().isEmpty()) {
            throw unknown(spot);
        }
        Piece.Known known =
                new Piece.Known(spot.from(), spot.to(), spot.senses().get(0));
        if (known.entry().kind().isRefused()) {
            throw refused(known);
        }
        if (known.is(WordKind.PERCENT)) {
            throw strayPercent(spot);
        }
        pieces.add(known);
    }

    private int amount(int at) {
        Spot number = spots.get(at);
        BigDecimal percent = new BigDecimal(number.text());
        int next = pastPercent(at + 1);
        int to = spots.get(next - 1).to();
        if (percent.signum() <= 0 || percent.compareTo(HUNDRED) > 0) {
            throw new Unreadable(
                    number.from(),
                    to,
                    "a share of " + number.text() + " % cannot be",
                    "give a share above 0 and at most 100 percent");
        }
        pieces.add(new Piece.Amount(number.from(), to, percent));
        return next;
    }

    /** Past the percent sign or word, which a hyphen may tie to its number, as in "100-percent"; the place itself where none is. */
    private int pastPercent(int at) {
        boolean tied = at + 1 < spots.size()
                && spots.get(at).isSign("-")
                && spots.get(at).from() == spots.get(at - 1).to()
                && spots.get(at).to() == spots.get(at + 1).from();
        int percent = tied ? at + 1 : at;
        return percent < spots.size()
                        && (spots.get(percent).isSign("%") || spots.get(percent).mayBe(WordKind.PERCENT))
                ? percent + 1
                : at;
    }

    /** Whether the point here ends an abbreviation, as in "bzw." and "pct.", rather than a composition. */
    private boolean endsAbbreviation(int at) {
        if (at == 0
                || !spots.get(at).isSign(".")
                || spots.get(at).from() != spots.get(at - 1).to()) {
            return false;
        }
        Spot before = spots.get(at - 1);
        return before.isOnly(WordKind.OR)
                || (before.isOnly(WordKind.PERCENT) && before.text().length() <= LONGEST_SHORT_PERCENT);
    }

    private static Unreadable strayPercent(Spot sign) {
        return new Unreadable(
                sign.from(), sign.to(), "no number stands before this percent sign", "write the number before it");
    }

    private Unreadable unknown(Spot token) {
        return new Unreadable(
                token.from(),
                token.to(),
                "'" + Shown.excerpt(text, token.from(), token.to()) + "' is not a word known from fibre-content labels",
                "check the spelling, write the generic fibre name, or leave out what is not about fibre content");
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
